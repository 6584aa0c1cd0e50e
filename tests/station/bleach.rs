//! Bleach recipes, ppm = % × 10⁴: the convention of the guidance. The amounts are the publications'; the ppm
//! follow from them unless the line says that they are printed there.

const CUP: f64 = 1.0 / 16.0; // of a US gallon
const TABLESPOON: f64 = CUP / 16.0;

const WHO: &str = "WHO 2014 (acute respiratory infections), Annex G, Table G.1; prints 500 ppm";
const WAC: &str = "WAC 296-823-14055";
const CDC: &str = "CDC, Cleaning and Sanitizing with Bleach after an Emergency";
const CDC_COVID: &str = "CDC's text on COVID-19, seen second-hand";
const CALLED_ONE_TO_TEN: &str = "a fact sheet, seen second-hand; both are called 1:10";

/// Source; bleach, % w/v; concentrate and total in one unit of volume; ppm.
#[rustfmt::skip]
pub const RECIPES: &[(&str, f64, f64, f64, &str)] = &[
    (WHO, 5.0, 1.0, 100.0, "500"),
    // 2 teaspoons made up to 1 quart; 1/3 cup and 1 tablespoon made up to 1 quart.
    (WAC, 5.25, 2.0 * TABLESPOON / 3.0, 0.25, "546.875"),
    (WAC, 5.25, CUP / 3.0 + TABLESPOON, 0.25, "5195.31"),
    // 1 tablespoon and 1 gallon of water; 1 cup and 5 gallons of water.
    (CDC, 5.25, TABLESPOON, 1.0 + TABLESPOON, "204.280"),
    (CDC, 5.25, CUP, 5.0 + CUP, "648.148"),
    // 5 tablespoons, or 1/3 cup, and 1 gallon of water.
    (CDC_COVID, 5.25, 5.0 * TABLESPOON, 1.0 + 5.0 * TABLESPOON, "1005.75"),
    (CDC_COVID, 5.25, CUP / 3.0, 1.0 + CUP / 3.0, "1071.43"),
    (CALLED_ONE_TO_TEN, 5.25, 1.0, 10.0, "5250"),
    (CALLED_ONE_TO_TEN, 5.25, 1.0, 11.0, "4772.73"),
];
