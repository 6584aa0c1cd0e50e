//! A table computed beforehand. "Ideal" is the root of the charge balance by scipy 1.17's brentq, with
//! which pHcalc 0.2.0 and PHREEQC without activities agree; "Davies" is PHREEQC 3 through phreeqpython
//! 1.6.2 with the same constants. mol/L were given to PHREEQC as mol/kg of water.

use crate::cases::Given;

/// Na, as the tables name it.
pub const NA: &str = "Na";
/// Cl, as the tables name it.
pub const CL: &str = "Cl";
/// acetic acid, as the tables name it.
pub const ACETIC: &str = "acetic acid";
/// citric acid, as the tables name it.
pub const CITRIC: &str = "citric acid";
/// ammonium, as the tables name it.
pub const AMMONIUM: &str = "ammonium";
/// carbonic acid, as the tables name it.
pub const CARBONIC: &str = "carbonic acid";
/// silicic acid, as the tables name it.
pub const SILICIC: &str = "silicic acid";
/// phosphoric acid, as the tables name it.
pub const PHOSPHORIC: &str = "phosphoric acid";
/// hypochlorous acid, as the tables name it.
pub const BLEACH: &str = "hypochlorous acid";

/// 200 ppm of available chlorine: 0.2 / 70.906 mol/L.
pub const PPM_200: f64 = 0.002_820_635;

/// What is in it, mol/L; ideal pH; pH with Davies activities.
#[rustfmt::skip]
pub const TABLE: &[(Given, f64, f64)] = &[
    (&[(ACETIC, 0.833)], 2.419_173, 2.4190),
    (&[(ACETIC, 0.1)], 2.881_372, 2.8814),
    (&[(ACETIC, 0.001)], 3.907_204, 3.9076),
    (&[(CITRIC, 0.01)], 2.619_961, 2.6226),
    (&[(CITRIC, 0.005), (NA, 0.002)], 3.160_983, 3.1504),
    (&[(NA, 0.001)], 11.0, 10.9845),
    (&[(NA, 0.1)], 13.0, 12.8942),
    (&[(CL, 0.01)], 2.0, 2.0448),
    (&[(CL, 0.1)], 1.0, 1.1072),
    (&[(AMMONIUM, 0.01)], 10.616_823, 10.6167),
    (&[(NA, 0.02), (CARBONIC, 0.01)], 11.132_821, 10.9984),
    (&[(NA, 0.01), (CARBONIC, 0.01)], 8.335_834, 8.2462),
    (&[(NA, 0.02), (SILICIC, 0.01)], 11.976_304, 11.9078),
    (&[(NA, 0.002), (SILICIC, 0.001)], 11.022_539, 11.0007),
    (&[(PHOSPHORIC, 0.01)], 2.258_242, 2.2720),
    (&[(NA, 0.03), (PHOSPHORIC, 0.01)], 11.873_830, 11.7099),
    (&[(NA, PPM_200), (BLEACH, PPM_200)], 9.487_796, 9.4624),
    (&[(NA, PPM_200 + 1e-4), (BLEACH, PPM_200)], 10.036_471, 10.0108),
    (&[(NA, 0.01), (ACETIC, 0.01)], 8.378_828, 8.3337),
    (&[(NA, 0.075), (PHOSPHORIC, 0.05)], 7.207, 6.8853),
    (&[(NA, 0.05), (CITRIC, 0.05)], 3.9471, 3.7661),
    (&[(NA, 0.075), (CARBONIC, 0.05)], 10.3219, 10.0032),
];

/// Vinegar of 0.833 mol/L, 6 US fl oz on top of 10, 20 and 30 gal of tap water of pH 7.5, alkalinity in
/// mg/L of calcium carbonate.
#[rustfmt::skip]
pub const VINEGAR: [(f64, [(f64, f64); 3]); 4] = [
    (0.0, [(3.598_290, 3.5985), (3.754_304, 3.7546), (3.846_790, 3.8471)]),
    (50.0, [(4.315_788, 4.3018), (4.768_462, 4.7539), (5.171_518, 5.1568)]),
    (100.0, [(4.761_382, 4.7405), (5.575_280, 5.5548), (6.089_744, 6.0702)]),
    (200.0, [(5.574_077, 5.5456), (6.334_815, 6.3087), (6.592_235, 6.5678)]),
];

/// More into tap water of 100 mg/L and pH 7.5, its carbonate that of the ideal water in both columns.
#[rustfmt::skip]
pub const INTO_TAP: &[(Given, f64, f64)] = &[
    (&[], 7.5, 7.4773),
    (&[(NA, 0.001)], 10.059_594, 9.9835),
    (&[(NA, 0.01)], 11.891_084, 11.8386),
    (&[(NA, 0.01), (CARBONIC, 0.005)], 10.560_676, 10.4122),
    (&[(CITRIC, 0.002)], 4.020_119, 3.9825),
    (&[(CL, 0.001)], 6.295_216, 6.2736),
    (&[(CL, 0.003)], 2.998_835, 3.0248),
];

/// pH, and the share of hypochlorous acid against hypochlorite, per cent, at pKa 7.53.
pub const BLEACH_ACID: [(f64, f64); 8] = [
    (5.0, 99.7057),
    (6.0, 97.1334),
    (7.0, 77.2129),
    (7.5, 51.7263),
    (8.0, 25.3087),
    (9.0, 3.277_39),
    (10.0, 0.337_700),
    (11.0, 0.033_872_9),
];

pub const NBS_1969: &str = "J. Res. NBS 73A (1969) 37, doi 10.6028/jres.073A.004";
pub const JIS: &str = "JIS Z 8802 (confirmed 2011), reference solutions at 25 °C";

/// Potassium dihydrogen citrate, carbonate and hydrogencarbonate; borax, which the same abstract names as
/// the upper end of the scale before; equimolal phosphate; tetraoxalate KH₃(C₂O₄)₂.
#[rustfmt::skip]
pub const BUFFERS: &[(Given, f64, f64, &str)] = &[
    (&[("Na", 0.05), ("citric acid", 0.05)], 3.776, 0.03, NBS_1969),
    (&[("Na", 0.075), ("carbonic acid", 0.05)], 10.012, 0.03, NBS_1969),
    (&[("Na", 0.02), ("boric acid", 0.04)], 9.180, 0.03, NBS_1969),
    (&[("Na", 0.075), ("phosphoric acid", 0.05)], 6.86, 0.03, JIS),
    (&[("Na", 0.075), ("carbonic acid", 0.05)], 10.02, 0.03, JIS),
    (&[("Na", 0.02), ("boric acid", 0.04)], 9.18, 0.03, JIS),
    (&[("Na", 0.05), ("oxalic acid", 0.1)], 1.68, 0.03, JIS),
];
