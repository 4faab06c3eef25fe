//! The enums of calc that messages may word: the list of variants is calc's own.

use crate::check::Enum;

/// `CrownFull` as a file of messages has it: `crown-full`.
fn kebab(variant: &str) -> String {
    let mut kebab = String::new();
    for (at, c) in variant.chars().enumerate() {
        if c.is_ascii_uppercase() && at > 0 {
            kebab.push('-');
        }
        kebab.push(c.to_ascii_lowercase());
    }
    kebab
}

macro_rules! enums {
    ($($module:path { $($name:ident),+ $(,)? })+) => {
        vec![$($({
            use $module as of;
            Enum {
                name: stringify!($name).to_owned(),
                path: format!("{}::{}", stringify!($module).replace(' ', ""), stringify!($name)),
                variants: of::$name::ALL.iter().map(|it| kebab(&format!("{it:?}"))).collect(),
            }
        }),+),+]
    };
}

/// All of them.
pub(crate) fn all() -> Vec<Enum> {
    enums! {
        calc::answer { Outcome }
        calc::models::calibrate { NoRate }
        calc::models::at_visit { Act, NoAdvice, RingJudged, Seen }
        calc::models::height_aid { HeightBy, NoHeight }
        calc::models::outlook { OutlookClass, SizeClass }
        calc::models::reach { Why }
        calc::question::settings { CodeTopic, ContactKind }
        calc::terms::method { Level, Method }
        calc::terms::cite { Grade }
        calc::terms::species { Durability, SproutVigor, Suitability }
        calc::terms::tree { Condition, DrySpell, Herbicide, Limbs, Reply, Setting, Sign, Stage, TargetKind, Vigour }
        calc::timing { Flag, Topic, Verdict }
        calc::timing::spring { Doubt, Trouble }
    }
}
