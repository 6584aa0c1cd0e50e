//! A fill as it is drawn: the cup, the tank, and what half a step of the cup does to the ratio.

/// A cup and a tank, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fill {
    /// What the tank holds.
    pub tank: f64,
    /// Product and water in it.
    pub total: f64,
    /// Product.
    pub dose: f64,
    /// One step of the cup.
    pub step: f64,
    /// The unit on the cup, by its code.
    pub unit: &'static str,
    /// Parts of water to one part of product.
    pub ratio: f64,
    /// The same with half a step less.
    pub less: f64,
    /// The same with half a step more.
    pub more: f64,
}

impl Fill {
    /// Works the ratios out: `N = (V − x)/x` where the mix reaches a mark V, `N = W/x` where the product x goes on top
    /// of the water W. None where half a step is as much as the product.
    ///
    /// * `tank`, `total`, `dose`, `step`: m³; `water`: W, where the product goes on top of it.
    ///
    /// ```
    /// use brimline::practice::Fill;
    /// let fill = Fill::of([65.0, 65.0, 1.0, 0.1], "ml", None).unwrap();
    /// assert_eq!(fill.ratio, 64.0);
    /// assert!(fill.more < fill.ratio && fill.ratio < fill.less); // more product is less water for each part
    /// ```
    pub fn of([tank, total, dose, step]: [f64; 4], unit: &'static str, water: Option<f64>) -> Option<Self> {
        let half = step / 2.0;
        // On top the water stays what it is; up to a mark water makes room for product.
        let parts = |dose: f64| water.unwrap_or(total - dose) / dose;
        let (ratio, more) = (parts(dose), parts(dose + half));
        (half < dose).then(|| Self { tank, total, dose, step, unit, ratio, less: parts(dose - half), more })
    }
}
