//! Constants that the models are tuned by: each is found by its name, which is that of its field.

/// A number, or a group of them whose names are `group.field`.
pub trait Constant {
    /// By name. `of` is asked for each name once, in the order of the fields.
    fn by_name(name: &str, of: &mut dyn FnMut(&str) -> f64) -> Self;

    /// From the numbers in the order of the fields.
    fn in_order(next: &mut dyn FnMut() -> f64) -> Self;

    /// The numbers in the order of the fields.
    fn each(&self, to: &mut dyn FnMut(f64));
}

impl Constant for f64 {
    fn by_name(name: &str, of: &mut dyn FnMut(&str) -> f64) -> Self {
        of(name)
    }

    fn in_order(next: &mut dyn FnMut() -> f64) -> Self {
        next()
    }

    fn each(&self, to: &mut dyn FnMut(f64)) {
        to(*self);
    }
}

/// The name of a field: `ring` and `least_mm` make `ring.least_mm`.
#[must_use]
pub fn field(group: &str, field: &str) -> String {
    match group {
        "" => field.into(),
        group => [group, ".", field].concat(),
    }
}

/// Declares a group of constants. A field is all that a constant needs beside its row in content/rules.
#[macro_export]
macro_rules! constants {
    ($(#[$of:meta])* pub struct $name:ident { $($(#[$doc:meta])* pub $field:ident: $kind:ty),+ $(,)? }) => {
        $(#[$of])*
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct $name { $($(#[$doc])* pub $field: $kind),+ }

        impl $crate::terms::constants::Constant for $name {
            fn by_name(name: &str, of: &mut dyn FnMut(&str) -> f64) -> Self {
                Self {
                    $($field: $crate::terms::constants::Constant::by_name(
                        &$crate::terms::constants::field(name, stringify!($field)),
                        of,
                    )),+
                }
            }

            fn in_order(next: &mut dyn FnMut() -> f64) -> Self {
                // Before the struct is made: its fields are read in the order of the list.
                $(let $field = $crate::terms::constants::Constant::in_order(next);)+
                Self { $($field),+ }
            }

            fn each(&self, to: &mut dyn FnMut(f64)) {
                $($crate::terms::constants::Constant::each(&self.$field, to);)+
            }
        }
    };
}

pub(crate) use constants;

#[cfg(test)]
#[allow(unreachable_pub, reason = "what the macro makes is public")]
mod tests {
    use super::Constant;

    constants! {
        /// For the check below.
        pub struct Inner {
            /// First.
            pub low: f64,
            /// Second.
            pub high: f64,
        }
    }

    constants! {
        /// For the check below.
        pub struct Outer {
            /// Alone.
            pub alone: f64,
            /// A group.
            pub inner: Inner,
        }
    }

    #[test]
    fn a_constant_is_found_by_the_name_of_its_field_and_comes_back_in_order() {
        let mut asked = Vec::new();
        let by_name = Outer::by_name("", &mut |name| {
            asked.push(name.to_owned());
            asked.len() as f64
        });
        assert_eq!(asked, ["alone", "inner.low", "inner.high"]);
        let mut numbers = Vec::new();
        by_name.each(&mut |number| numbers.push(number));
        assert_eq!(numbers, [1.0, 2.0, 3.0]);
        let mut left = numbers.into_iter();
        assert_eq!(Outer::in_order(&mut || left.next().unwrap_or(0.0)), by_name);
    }
}
