//! A value as typed. Text is kept as it is; a number handed over the interface is written out, so that
//! the one reader judges it like anything typed.

use crate::terms::small::decimals::fixed;
use serde::de::{Deserializer, Error, Visitor};
use serde::{Deserialize, Serialize, Serializer};

/// What was typed in a field.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
#[cfg_attr(feature = "schema", derive(ts_rs::TS), ts(type = "string | number"))]
pub struct Text(pub String);

impl Text {
    /// The text without space round it.
    #[must_use]
    pub fn trimmed(&self) -> &str {
        self.0.trim()
    }

    /// A number written out, to six decimals: finer than any tape. What is no number stays unreadable on purpose.
    #[must_use]
    pub fn of_number(value: f64) -> Self {
        let mut text = fixed(value, 6);
        if text.contains('.') {
            text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
        }
        Self(if value.is_finite() {
            text
        } else {
            "NaN".into()
        })
    }

    /// Whether nothing was typed.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.trimmed().is_empty()
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Self(text.into())
    }
}

impl Serialize for Text {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.0)
    }
}

impl<'de> Deserialize<'de> for Text {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Any;
        impl Visitor<'_> for Any {
            type Value = Text;
            fn expecting(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str("text as typed")
            }
            fn visit_str<E: Error>(self, text: &str) -> Result<Text, E> {
                Ok(Text(text.into()))
            }
            fn visit_f64<E: Error>(self, value: f64) -> Result<Text, E> {
                Ok(Text::of_number(value))
            }
            fn visit_i64<E: Error>(self, value: i64) -> Result<Text, E> {
                self.visit_f64(value as f64)
            }
            fn visit_u64<E: Error>(self, value: u64) -> Result<Text, E> {
                self.visit_f64(value as f64)
            }
        }
        deserializer.deserialize_any(Any)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Text {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Text".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "description": "A value as typed, with or without a unit; a number is read as if it were typed.",
            "type": ["string", "number"]
        })
    }
}
