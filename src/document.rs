//! What is kept in files, part by part.

mod kinds;
pub(crate) mod part;

pub use part::{Part, Seen};

/// The most bytes of a file that is opened, 5 MB: no saved answer and no list of areas has a tenth of that.
pub const MOST_BYTES: usize = 5_000_000;

/// FNV-1a, 64 bit, as hex digits. It finds a slip, not a forger.
///
/// Source: G. Fowler, L. C. Noll, K.-P. Vo, D. Eastlake, The FNV Non-Cryptographic Hash Algorithm, RFC 9923.
///
/// ```
/// assert_eq!(brimline::document::checksum("a"), "af63dc4c8601ec8c"); // the document's test vector
/// ```
pub fn checksum(text: &str) -> String {
    format!("{:016x}", fnv(text.as_bytes()))
}

/// The same of bytes, as a number.
pub fn fnv(bytes: &[u8]) -> u64 {
    let step = |hash: u64, byte: &u8| (hash ^ u64::from(*byte)).wrapping_mul(0x0000_0100_0000_01b3);
    bytes.iter().fold(0xcbf2_9ce4_8422_2325, step)
}

/// Declares a part of a document, one row a field: `name: Type`, or `name: Type = blank` where the
/// blank one is not the type's default.
///
/// It is written as an object with a key a field. On reading, a key that the file lacks leaves its
/// field blank, since an earlier version knew fewer, and a key that nobody knows is passed over.
macro_rules! document {
    ($(#[$doc:meta])* $name:ident { $($(#[$of:meta])* $field:ident: $kind:ty $(= $blank:expr)?),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Debug)]
        pub struct $name { $($(#[$of])* pub $field: $kind),* }

        impl Default for $name {
            fn default() -> Self {
                Self { $($field: $crate::document::document!(@blank $($blank)?)),* }
            }
        }

        impl $crate::document::Part for $name {
            fn blank() -> Self {
                Self::default()
            }

            $crate::document::fields!($($field),*);
        }

        $crate::document::compared!($name);
        $crate::document::kept!($name);
    };
    (@blank) => { Default::default() };
    (@blank $blank:expr) => { $blank };
}

pub(crate) use document;

/// The methods of a [`Part`] that has fields.
macro_rules! fields {
    ($($field:ident),*) => {
        fn seen(&self) -> $crate::document::Seen<'_> {
            $crate::document::Seen::Fields(&[$(stringify!($field)),*])
        }

        // Both compile to the same code, which stands in the page once.
        fn item(&self, place: usize) -> Option<&dyn $crate::document::Part> {
            let mut left = place;
            $(
                if left == 0 {
                    return Some(&self.$field);
                }
                left -= 1;
            )*
            let _ = left;
            None
        }

        fn item_mut(&mut self, place: usize) -> Option<&mut dyn $crate::document::Part> {
            let mut left = place;
            $(
                if left == 0 {
                    return Some(&mut self.$field);
                }
                left -= 1;
            )*
            let _ = left;
            None
        }

        fn clear(&mut self) {
            *self = <Self as $crate::document::Part>::blank();
        }
    };
}

pub(crate) use fields;

/// Compares [`Part`]s that have fields.
macro_rules! compared {
    ($name:ident) => {
        impl PartialEq for $name {
            fn eq(&self, other: &Self) -> bool {
                $crate::document::part::same(self, other)
            }
        }

        impl Eq for $name {}
    };
}

pub(crate) use compared;

/// Reads and writes [`Part`]s as serde asks for it.
macro_rules! kept {
    ($name:ident) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                $crate::document::part::write(self, serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let mut one = <Self as $crate::document::Part>::blank();
                $crate::document::part::read(&mut one, deserializer)?;
                Ok(one)
            }
        }
    };
}

pub(crate) use kept;

/// Declares a part of a document as [`document`] does, and its [`Shape`](crate::shape::Shape) with it: what
/// goes from one device to another is held to that before it is read.
macro_rules! shaped {
    ($(#[$doc:meta])* $name:ident { $($(#[$of:meta])* $field:ident: $kind:ty $(= $blank:expr)?),* $(,)? }) => {
        $crate::document::document! {
            $(#[$doc])*
            $name { $($(#[$of])* $field: $kind $(= $blank)?),* }
        }

        impl $crate::shape::Shaped for $name {
            const SHAPE: &'static $crate::shape::Shape = &$crate::shape::Shape::Object {
                fields: &[$((stringify!($field), <$kind as $crate::shape::Shaped>::SHAPE)),*],
                blank: || serde_json::to_string(&Self::default()).unwrap_or_default(),
            };
        }
    };
}

pub(crate) use shaped;
