//! Which unit a figure is shown in: by the reader's system and by what the figure is.

use super::{Dimension, Unit, unit};
use crate::coded::coded;

coded! {
    /// The units that a site works in.
    #[derive(Default)]
    System {
        /// US customary: US gallons and US fluid ounces.
        #[default]
        Us = "us",
        /// Litres, millilitres, metres.
        Metric = "metric",
        /// Imperial gallons and imperial fluid ounces.
        Imperial = "imperial",
    }
}

/// What a figure is on the floor: a dose and a tank are both volumes, shown in different units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// An amount of concentrate to measure out.
    Dose,
    /// A volume of water or use solution.
    Fill,
    /// A flow of solution.
    Flow,
    /// A floor area.
    Area,
    /// A width.
    Width,
    /// The width of a lane, or of open floor.
    Lane,
    /// Travel speed.
    Speed,
    /// A time.
    Time,
    /// Solution a floor area.
    Rate,
    /// Floor area a time.
    Productivity,
    /// A volume fraction, shown as a percentage.
    Percent,
    /// The n of "1 to n".
    Ratio,
    /// A number of whole things.
    Count,
    /// A pH.
    Ph,
    /// Powder, or concentrate that is weighed.
    Mass,
    /// Active substance in a volume.
    Active,
    /// Powder in a volume.
    Powder,
    /// What a volume weighs.
    Density,
    /// A temperature.
    Temperature,
    /// Mass on a floor area.
    Residue,
    /// A cost.
    Money,
    /// Money a volume.
    VolumePrice,
    /// Money a time.
    Wage,
    /// Money a floor area.
    AreaPrice,
    /// How often.
    Frequency,
    /// How thick a film lies.
    Thickness,
    /// What a film weighs on each area.
    FilmMass,
    /// The speed of air, in the unit that its formula takes.
    AirSpeed,
    /// A pressure of vapour.
    Pressure,
    /// A heat of evaporation.
    Heat,
    /// What a volume of finish covers.
    Coverage,
}

impl Kind {
    /// The unit that `system` shows it in; `None` for plain numbers.
    pub fn unit(self, system: System) -> Option<&'static Unit> {
        use System::{Imperial, Metric, Us};
        let code = match (self, system) {
            (Self::Dose, Us) => "floz_us",
            (Self::Dose, Metric) => "ml",
            (Self::Dose, Imperial) => "floz_imp",
            (Self::Fill, Us) => "gal_us",
            (Self::Fill, Metric) => "l",
            (Self::Fill, Imperial) => "gal_imp",
            (Self::Flow, Us) => "gal_us_per_min",
            (Self::Flow, Metric) => "l_per_min",
            (Self::Flow, Imperial) => "gal_imp_per_min",
            (Self::Area, Metric) => "m2",
            (Self::Area, _) => "ft2",
            (Self::Width, Metric) => "cm",
            (Self::Width, _) => "in",
            (Self::Lane, Metric) => "m",
            (Self::Lane, _) => "ft",
            (Self::Speed, Metric) => "km_per_h",
            (Self::Speed, _) => "mph",
            (Self::Time, _) => "min",
            (Self::Rate, Us) => "gal_us_per_1000ft2",
            (Self::Rate, Metric) => "ml_per_m2",
            (Self::Rate, Imperial) => "gal_imp_per_1000ft2",
            (Self::Productivity, Metric) => "m2_per_h",
            (Self::Productivity, _) => "ft2_per_h",
            (Self::Percent, _) => "percent",
            (Self::Mass, Metric) => "g",
            (Self::Mass, _) => "oz",
            (Self::Active, _) => "mg_per_l",
            (Self::Powder, Us) => "oz_per_gal_us",
            (Self::Powder, Metric) => "g_per_l",
            (Self::Powder, Imperial) => "oz_per_gal_imp",
            (Self::Density, Us) => "lb_per_gal_us",
            (Self::Density, _) => "g_per_ml",
            (Self::Temperature, Us) => "deg_f",
            (Self::Temperature, _) => "deg_c",
            (Self::Residue, Metric) => "mg_per_m2",
            (Self::Residue, _) => "oz_per_1000ft2",
            (Self::Money, _) => "money",
            (Self::VolumePrice, Us) => "money_per_gal_us",
            (Self::VolumePrice, Metric) => "money_per_l",
            (Self::VolumePrice, Imperial) => "money_per_gal_imp",
            (Self::Wage, _) => "money_per_h",
            (Self::AreaPrice, Metric) => "money_per_100m2",
            (Self::AreaPrice, _) => "money_per_1000ft2",
            (Self::Frequency, _) => "per_week",
            (Self::Thickness, Metric) => "um",
            (Self::Thickness, _) => "mil",
            (Self::FilmMass, Metric) => "g_per_m2",
            (Self::FilmMass, _) => "oz_per_ft2",
            (Self::AirSpeed, _) => "m_per_s",
            (Self::Pressure, _) => "kpa",
            (Self::Heat, _) => "kj_per_kg",
            (Self::Coverage, Us) => "ft2_per_gal_us",
            (Self::Coverage, Metric) => "m2_per_l",
            (Self::Coverage, Imperial) => "ft2_per_gal_imp",
            (Self::Ratio | Self::Count | Self::Ph, _) => return None,
        };
        unit(code)
    }

    /// The dimension of its figures; `None` for plain numbers.
    pub fn dimension(self) -> Option<Dimension> {
        self.unit(System::Metric).map(|unit| unit.dimension)
    }
}
