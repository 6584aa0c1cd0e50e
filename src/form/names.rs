//! The stable names of every computed figure: `data-answer` on the page, keys in a saved answer.

macro_rules! names {
    ($($(#[$doc:meta])* $name:ident = $text:literal;)*) => {
        $($(#[$doc])* pub const $name: &str = $text;)*
        /// All names.
        pub const ALL: &[&str] = &[$($text),*];
    };
}

names! {
    /// Use solution in this fill, m³.
    FILL_TOTAL = "fill.total";
    /// Water in this fill, m³.
    FILL_WATER = "fill.water";
    /// Concentrate for this fill, m³.
    FILL_DOSE = "fill.dose";
    /// Concentrate as a volume fraction of the use solution.
    FILL_STRENGTH = "fill.strength";
    /// Parts of water to one part of concentrate.
    FILL_RATIO = "fill.ratio";
    /// Whole graduations, strokes or caps.
    FILL_COUNT = "fill.count";
    /// Concentrate rounded to the measure, m³.
    FILL_ROUNDED = "fill.rounded";
    /// Parts of water to one that the rounded dose makes.
    FILL_ROUNDED_RATIO = "fill.rounded_ratio";
    /// The least that the label asks for this fill, m³.
    LABEL_LOW = "fill.label_low";
    /// The most that the label asks for this fill, m³.
    LABEL_HIGH = "fill.label_high";
    /// The least that the machine takes for this fill, m³.
    MACHINE_LOW = "fill.machine_low";
    /// The most that the machine takes for this fill, m³.
    MACHINE_HIGH = "fill.machine_high";
    /// The least that a minimum by law asks for this fill, m³.
    MINIMUM_LOW = "fill.minimum_low";
    /// The least that the site's standard asks for this fill, m³.
    STANDARD_LOW = "fill.standard_low";
    /// The most that the site's standard asks for this fill, m³.
    STANDARD_HIGH = "fill.standard_high";
    /// Powder, or concentrate that is weighed, kg.
    FILL_MASS = "fill.mass";
    /// The same in whole divisions or scoops, kg.
    FILL_MASS_ROUNDED = "fill.mass_rounded";
    /// The least powder that the label asks for this fill, kg.
    POWDER_LOW = "fill.powder_low";
    /// The most powder that the label asks for this fill, kg.
    POWDER_HIGH = "fill.powder_high";
    /// The number of a wall unit's metering tip.
    FILL_SETTING = "fill.setting";
    /// Fills that the machine's own bottle lasts.
    FILL_BOTTLE_FILLS = "fill.bottle_fills";
    /// Time that it lasts at the lowest flow setting, s.
    FILL_BOTTLE_TIME = "fill.bottle_time";
    /// Active substance in the use solution, kg/m³.
    FILL_ACTIVE = "fill.active";
    /// The same counted as available chlorine, kg/m³.
    FILL_CHLORINE = "fill.chlorine";
    /// How long the label wants the floor wet, s.
    FILL_CONTACT = "fill.contact";
    /// One standard deviation of the dose, m³.
    SURE_ERROR = "fill.sure_error";
    /// One standard deviation of the parts of water.
    SURE_RATIO_ERROR = "fill.sure_ratio_error";
    /// Parts of water to 1 at the strongest that the tolerances allow.
    SURE_STRONGEST = "fill.sure_strongest";
    /// Parts of water to 1 at the weakest that the tolerances allow.
    SURE_WEAKEST = "fill.sure_weakest";
    /// The chance of being inside the label's window, first order.
    SURE_INSIDE = "fill.sure_inside";
    /// The same by drawing doses.
    SURE_DRAWN = "fill.sure_drawn";
    /// Use solution to drain first, m³.
    STATION_DRAIN = "station.drain";
    /// Water to add, m³.
    STATION_WATER = "station.water";
    /// Concentrate to add, m³.
    STATION_CONCENTRATE = "station.concentrate";
    /// Whole graduations, strokes or caps of it.
    STATION_COUNT = "station.count";
    /// Concentrate rounded to the measure, m³.
    STATION_ROUNDED = "station.rounded";
    /// What the tank holds afterwards, m³.
    STATION_LEVEL = "station.level";
    /// The strength afterwards, or as it was read.
    STATION_STRENGTH = "station.strength";
    /// The weakest that a reading can mean.
    STATION_STRENGTH_LOW = "station.strength_low";
    /// The strongest that a reading can mean.
    STATION_STRENGTH_HIGH = "station.strength_high";
    /// Active substance as a strip or drops show it, kg/m³.
    STATION_ACTIVE = "station.active";
    /// Parts of water to one part of concentrate, of that strength.
    STATION_RATIO = "station.ratio";
    /// Floor area passed a time, m²/s.
    FLOW_PASSING = "flow.passing";
    /// The number of the setting.
    FLOW_SETTING = "flow.setting";
    /// Its flow, m³/s.
    FLOW_FLOW = "flow.flow";
    /// Its application rate, m³/m².
    FLOW_RATE = "flow.rate";
    /// Run time of a full tank, s.
    FLOW_TANK_TIME = "flow.tank_time";
    /// Floor area of a full tank, m².
    FLOW_TANK_AREA = "flow.tank_area";
    /// The speed at which the setting would meet the target, m/s.
    FLOW_SPEED = "flow.speed";
    /// Passes that reach the target where one does not.
    FLOW_PASSES = "flow.passes";
    /// The number of the setting for those passes.
    FLOW_PASSES_SETTING = "flow.passes_setting";
    /// How thick it lies when it is laid down, m.
    FLOW_THICKNESS = "flow.thickness";
    /// What stays on the floor, m³/m².
    FLOW_FILM = "flow.film";
    /// How thick that lies, m.
    FLOW_FILM_THICKNESS = "flow.film_thickness";
    /// The least time that it stays wet, s.
    FLOW_DRY_FROM = "flow.dry_from";
    /// The most time that it stays wet, s.
    FLOW_DRY_TO = "flow.dry_to";
    /// Flow with a full tank that gravity drains, m³/s.
    FLOW_FULL = "flow.full";
    /// With half of the water above the valve gone, m³/s.
    FLOW_HALF = "flow.half";
    /// With an empty tank, m³/s.
    FLOW_LAST = "flow.last";
    /// Floor area of the shift, m².
    SHIFT_AREA = "shift.area";
    /// Time at the floor, s.
    SHIFT_RUN_TIME = "shift.run_time";
    /// With refills, s.
    SHIFT_TOTAL_TIME = "shift.total_time";
    /// Use solution, m³.
    SHIFT_SOLUTION = "shift.solution";
    /// Water, m³.
    SHIFT_WATER = "shift.water";
    /// Concentrate, m³.
    SHIFT_CONCENTRATE = "shift.concentrate";
    /// The time of people, s.
    SHIFT_LABOUR = "shift.labour";
    /// What is drained out of the recovery tanks, m³.
    SHIFT_WASTE = "shift.waste";
    /// Charges of batteries.
    SHIFT_CHARGES = "shift.charges";
    /// What the concentrate costs, in the site's money.
    COST_CONCENTRATE = "cost.concentrate";
    /// What the water costs.
    COST_WATER = "cost.water";
    /// What the labour costs.
    COST_LABOUR = "cost.labour";
    /// What the shift costs.
    COST_TOTAL = "cost.total";
    /// The same for each area of floor, one/m².
    COST_EACH = "cost.each";
    /// Floor cleaned in a mean month, m².
    MONTH_AREA = "month.area";
    /// Use solution in a mean month, m³.
    MONTH_SOLUTION = "month.solution";
    /// Water, m³.
    MONTH_WATER = "month.water";
    /// Concentrate, m³.
    MONTH_CONCENTRATE = "month.concentrate";
    /// What is drained out of the recovery tanks, m³.
    MONTH_WASTE = "month.waste";
    /// The time of people, s.
    MONTH_LABOUR = "month.labour";
    /// What it costs.
    MONTH_COST = "month.cost";
    /// Floor cleaned in a mean year, m².
    YEAR_AREA = "year.area";
    /// Use solution in a mean year, m³.
    YEAR_SOLUTION = "year.solution";
    /// Water, m³.
    YEAR_WATER = "year.water";
    /// Concentrate, m³.
    YEAR_CONCENTRATE = "year.concentrate";
    /// What is drained out of the recovery tanks, m³.
    YEAR_WASTE = "year.waste";
    /// The time of people, s.
    YEAR_LABOUR = "year.labour";
    /// What it costs.
    YEAR_COST = "year.cost";
    /// The lowest pH that the use solution may have, by what it is made of.
    PH_LOW = "cautions.ph_low";
    /// The highest.
    PH_HIGH = "cautions.ph_high";
    /// Parts of water to 1 from which on the use solution may leave the pH that the floor bears.
    PH_LEAVES = "cautions.ph_leaves";
    /// The same from which on it surely does.
    PH_LEAVES_SURELY = "cautions.ph_leaves_surely";
    /// Dissolved solids that one cleaning leaves, kg/m².
    RESIDUE_ONE = "cautions.residue";
    /// The most that many cleanings leave, kg/m².
    RESIDUE_SUM = "cautions.residue_sum";
    /// Product changes, each a dump and a rinse.
    SHIFT_CHANGES = "shift.changes";
    /// Fills of the tank.
    SHIFT_FILLS = "shift.fills";
    /// Finish for all coats, m³.
    FINISH_VOLUME = "finish.volume";
    /// Finish for one coat, m³.
    FINISH_COAT = "finish.coat";
    /// Strip solution, m³.
    STRIP_SOLUTION = "finish.strip";
    /// Its concentrate, m³.
    STRIP_CONCENTRATE = "finish.strip_concentrate";
    /// The least of it that its label asks, where that is a range, m³.
    STRIP_LOW = "finish.strip_low";
    /// The most, m³.
    STRIP_HIGH = "finish.strip_high";
    /// Its water, m³.
    STRIP_WATER = "finish.strip_water";
    /// Full tanks of it.
    STRIP_TANKS = "finish.strip_tanks";
    /// Concentrate for a full one, m³.
    STRIP_TANK_DOSE = "finish.strip_tank_dose";
    /// What is left for the last tank, m³.
    STRIP_LAST = "finish.strip_last";
    /// Concentrate for it, m³.
    STRIP_LAST_DOSE = "finish.strip_last_dose";
    /// Water of one rinse, m³.
    FINISH_RINSE = "finish.rinse";
    /// The soonest that a coat is dry, where that is an estimate, s.
    COAT_DRY_FROM = "finish.dry_from";
    /// How long to count on for a coat, s.
    COAT_DRY_TO = "finish.dry_to";
    /// From the first coat to the first wet scrub, s.
    FINISH_READY = "finish.ready";
    /// The patch of a trial that its records point to, from 1.
    TRIAL_SUGGESTED = "finish.suggested";
    /// Concentrate used by the log, m³.
    LOG_USED = "log.used";
    /// Concentrate as planned, of the fills that were measured, m³.
    LOG_PLANNED = "log.planned";
    /// Concentrate as measured, of the same fills, m³.
    LOG_MEASURED = "log.measured";
    /// The mean of measured of planned.
    LOG_CENTRE = "log.centre";
    /// The lower limit of a dose, a share of its plan.
    LOG_LOWER = "log.lower";
    /// The upper limit.
    LOG_UPPER = "log.upper";
    /// The mean of the moving ranges.
    LOG_RANGE = "log.range";
    /// The upper limit of a range.
    LOG_RANGE_UPPER = "log.range_upper";
    /// What the fills of the log cost.
    LOG_COST = "log.cost";
    /// Their concentrate.
    LOG_COST_CONCENTRATE = "log.cost_concentrate";
    /// Their water.
    LOG_COST_WATER = "log.cost_water";
    /// Water and product in the tank that is played with, m³.
    NUMBERS_TOTAL = "numbers.total";
    /// Water in it, m³.
    NUMBERS_WATER = "numbers.water";
    /// Product in it, m³.
    NUMBERS_DOSE = "numbers.dose";
    /// The edge of a cube that holds a full tank, m.
    NUMBERS_TANK_EDGE = "numbers.tank_edge";
    /// The edge of a cube that holds the product, m.
    NUMBERS_DOSE_EDGE = "numbers.dose_edge";
    /// What is laid on each area, m³/m².
    NUMBERS_RATE = "numbers.rate";
    /// How thick it lies, m.
    NUMBERS_THICKNESS = "numbers.thickness";
    /// What it weighs on each area, kg/m².
    NUMBERS_WEIGHT = "numbers.weight";
    /// What lies on one tile, m³.
    NUMBERS_TILE = "numbers.tile";
    /// Sheets of paper that are as thick.
    NUMBERS_SHEETS = "numbers.sheets";
}
