//! What is kept in files, part by part.

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
/// field blank, since an earlier version knew fewer, and a key that nobody knows is passed over. What
/// serde derives for the same costs three times as much of the page: it holds every field twice and has
/// a mistake of its own ready for each.
macro_rules! document {
    ($(#[$doc:meta])* $name:ident { $($(#[$of:meta])* $field:ident: $kind:ty $(= $blank:expr)?),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq, Eq)]
        pub struct $name { $($(#[$of])* pub $field: $kind),* }

        impl Default for $name {
            fn default() -> Self {
                Self { $($field: $crate::document::document!(@blank $($blank)?)),* }
            }
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeMap;
                let mut map = serializer.serialize_map(None)?;
                $(map.serialize_entry(stringify!($field), &self.$field)?;)*
                map.end()
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                struct Reader;

                impl<'de> serde::de::Visitor<'de> for Reader {
                    type Value = $name;

                    fn expecting(&self, out: &mut std::fmt::Formatter) -> std::fmt::Result {
                        out.write_str(stringify!($name))
                    }

                    fn visit_map<A: serde::de::MapAccess<'de>>(self, mut map: A) -> Result<$name, A::Error> {
                        let mut document = $name::default();
                        while let Some(key) = map.next_key::<String>()? {
                            match key.as_str() {
                                $(stringify!($field) => document.$field = map.next_value()?,)*
                                _ => drop(map.next_value::<serde::de::IgnoredAny>()?),
                            }
                        }
                        Ok(document)
                    }
                }

                deserializer.deserialize_map(Reader)
            }
        }
    };
    (@blank) => { Default::default() };
    (@blank $blank:expr) => { $blank };
}

pub(crate) use document;

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
