//! Short lists to choose from, each choice with the stable code that files and word keys know it by.

/// One of a list of choices.
pub trait Coded: Copy + PartialEq + 'static {
    /// All, in the order shown.
    const ALL: &'static [Self];

    /// Their codes, in the same order.
    const CODES: &'static [&'static str];

    /// The stable code.
    fn code(self) -> &'static str {
        Self::ALL.iter().zip(Self::CODES).find(|(one, _)| **one == self).map_or("", |(_, code)| code)
    }

    /// The one with this code.
    fn from_code(code: &str) -> Option<Self> {
        // The search itself knows nothing of the type, so that it stands in the page only once.
        position(Self::CODES, code).and_then(|index| Self::ALL.get(index).copied())
    }
}

fn position(codes: &[&str], code: &str) -> Option<usize> {
    codes.iter().position(|one| *one == code)
}

/// Declares a list of choices, one row each: `Name = "code"`, in the order shown.
///
/// They are read and written as their codes.
macro_rules! coded {
    ($(#[$doc:meta])* $name:ident { $($(#[$of:meta])* $one:ident = $code:literal),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum $name { $($(#[$of])* $one),* }

        impl $name {
            /// All, in the order shown.
            pub const ALL: &'static [Self] = &[$(Self::$one),*];

            /// The stable code in files and word keys.
            pub const fn code(self) -> &'static str {
                match self { $(Self::$one => $code),* }
            }

            /// The one with this code.
            pub fn from_code(code: &str) -> Option<Self> {
                <Self as $crate::coded::Coded>::from_code(code)
            }
        }

        impl $crate::coded::Coded for $name {
            const ALL: &'static [Self] = Self::ALL;
            const CODES: &'static [&'static str] = &[$($code),*];
        }

        impl $crate::shape::Shaped for $name {
            const SHAPE: &'static $crate::shape::Shape =
                &$crate::shape::Shape::Choice(<Self as $crate::coded::Coded>::CODES);
        }

        impl $crate::document::Part for $name {
            fn blank() -> Self {
                Self::ALL[0]
            }

            fn seen(&self) -> $crate::document::Seen<'_> {
                $crate::document::Seen::Text(self.code())
            }

            fn take(&mut self, value: $crate::document::Seen) -> bool {
                let $crate::document::Seen::Text(code) = value else { return false };
                Self::from_code(code).map(|one| *self = one).is_some()
            }
        }

        $crate::document::kept!($name);
    };
}

pub(crate) use coded;
