//! Precautionary (P) statements: what a label tells its reader to do.

use crate::source::Source;

/// When a precaution applies; the first digit of its code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Purpose {
    /// For everyone who buys it: P1xx.
    General,
    /// Before and during use: P2xx.
    Prevention,
    /// After a spill, a splash or a fire: P3xx.
    Response,
    /// Where it stands: P4xx.
    Storage,
    /// When it is done with: P5xx.
    Disposal,
}

/// One precautionary statement, single or combined.
#[derive(Debug, PartialEq, Eq)]
pub struct Precaution {
    /// The code as printed, a combined one joined by `+` without spaces.
    pub code: &'static str,
}

impl Precaution {
    /// Where code and wording come from. Codes that later editions replaced stay: labels still bear them.
    pub const SOURCE: Source = Source::unverified(
        "UN GHS, ST/SG/AC.10/30, Annex 3, section 2, Tables A3.2.1 to A3.2.5; from memory",
    );

    /// When it applies.
    ///
    /// ```
    /// use brimline::chemistry::ghs::{Purpose, precaution::find};
    /// assert_eq!(find("P280").unwrap().purpose(), Purpose::Prevention);
    /// ```
    pub const fn purpose(&self) -> Purpose {
        match self.code.as_bytes()[1] {
            b'1' => Purpose::General,
            b'2' => Purpose::Prevention,
            b'3' => Purpose::Response,
            b'4' => Purpose::Storage,
            _ => Purpose::Disposal,
        }
    }

    /// The word key of the statement's text: `ghs-p-p280`, combined `ghs-p-p305-p351-p338`.
    pub fn key(&self) -> String {
        format!("ghs-p-{}", self.code.to_ascii_lowercase().replace('+', "-"))
    }
}

/// The statement with this code (upper case, combined with `+` and no spaces).
pub fn find(code: &str) -> Option<&'static Precaution> {
    ALL.iter().find(|one| one.code == code)
}

const fn p(code: &'static str) -> Precaution {
    Precaution { code }
}

/// The table, in code order.
#[rustfmt::skip]
pub static ALL: &[Precaution] = &[
    p("P101"), p("P102"), p("P103"),
    p("P201"), p("P202"), p("P203"), p("P210"), p("P211"), p("P212"), p("P220"), p("P221"), p("P222"),
    p("P223"), p("P230"), p("P231"), p("P231+P232"), p("P232"), p("P233"), p("P234"), p("P235"),
    p("P235+P410"), p("P236"), p("P240"), p("P241"), p("P242"), p("P243"), p("P244"), p("P250"), p("P251"),
    p("P260"), p("P261"), p("P262"), p("P263"), p("P264"), p("P264+P265"), p("P265"), p("P270"), p("P271"),
    p("P272"), p("P273"), p("P280"), p("P281"), p("P282"), p("P283"), p("P284"), p("P285"),
    p("P301"), p("P301+P310"), p("P301+P312"), p("P301+P316"), p("P301+P317"), p("P301+P330+P331"),
    p("P302"), p("P302+P334"), p("P302+P335+P334"), p("P302+P350"), p("P302+P352"), p("P302+P361+P354"),
    p("P303"), p("P303+P361+P353"), p("P304"), p("P304+P340"), p("P304+P341"),
    p("P305"), p("P305+P351+P338"), p("P305+P354+P338"), p("P306"), p("P306+P360"),
    p("P307+P311"), p("P308"), p("P308+P311"), p("P308+P313"), p("P308+P316"), p("P309+P311"),
    p("P310"), p("P311"), p("P312"), p("P313"), p("P314"), p("P315"), p("P316"), p("P317"), p("P318"),
    p("P319"), p("P320"), p("P321"), p("P330"), p("P331"), p("P332"), p("P332+P313"), p("P332+P317"),
    p("P333"), p("P333+P313"), p("P333+P317"), p("P334"), p("P335"), p("P336"), p("P336+P315"),
    p("P336+P317"), p("P337"), p("P337+P313"), p("P337+P317"), p("P338"), p("P340"), p("P342"),
    p("P342+P311"), p("P342+P316"), p("P351"), p("P352"), p("P353"), p("P354"), p("P360"), p("P361"),
    p("P361+P364"), p("P362"), p("P362+P364"), p("P363"), p("P364"), p("P370"), p("P370+P376"),
    p("P370+P378"), p("P370+P380+P375"), p("P370+P380+P375+P378"), p("P370+P372+P380+P373"), p("P371"),
    p("P371+P380+P375"), p("P372"), p("P373"), p("P375"), p("P376"), p("P377"), p("P378"), p("P380"),
    p("P381"), p("P390"), p("P391"),
    p("P401"), p("P402"), p("P402+P404"), p("P403"), p("P403+P233"), p("P403+P235"), p("P404"), p("P405"),
    p("P406"), p("P407"), p("P410"), p("P410+P403"), p("P410+P412"), p("P411"), p("P411+P235"), p("P412"),
    p("P413"), p("P420"),
    p("P501"), p("P502"), p("P503"),
];
