//! The inputs as read, what was assumed, and how to keep the answer.

use super::say::Say;
use super::{fields, reach, region};
use crate::measure;
use crate::words::m;
use calc::answer::Assumed;
use calc::question::Day;
use calc::terms::place::Place;
use calc::terms::tree::{Condition, DrySpell, Goal, Herbicide, Limbs, Vigour};
use calc::timing::Rates;

/// One input as read.
pub struct Input {
    /// The field's path.
    pub field: String,
    /// Its label.
    pub label: String,
    /// Its value in words.
    pub value: String,
}

/// Inputs in the order of the form.
struct Inputs(Vec<Input>);

/// The button that copies a link.
pub const COPY_LINK: &str = "Copy link";
/// Inputs and formulas.
pub const WORKING: &str = "Working";
/// Inputs as read.
pub const TOLD: &str = "What you told us";
/// What was used instead.
pub const ASSUMED: &str = "What we assumed";
/// Formulas.
pub const MADE: &str = "How the numbers were made";
/// Printing and copying.
pub const KEEP: &str = "Keep this answer";
/// Its buttons.
pub const PRINT: &str = "Print one page";
/// For a call.
pub const PRINT_CALL: &str = "Print one page for the call";
/// Copy.
pub const COPY: &str = "Copy as text";
/// Links to a field.
pub const CHANGE: &str = "Change";
/// Sources, folded.
pub const ALL_SOURCES: &str = "All sources of this answer";
impl Inputs {
    /// Adds one.
    fn told(&mut self, field: &str, value: String) {
        self.0.push(Input {
            label: fields::field(field),
            field: field.into(),
            value,
        });
    }

    /// Adds one that a word tells, where it was said.
    fn said(&mut self, said: bool, field: &str, word: &str) {
        if said {
            self.told(field, word.into());
        }
    }
}

/// A field that was not given, in the words of the list of assumptions.
pub fn assumed_field(field: &str) -> Option<&'static str> {
    crate::words::named(ASSUMED_FIELDS, field)
}

const ASSUMED_FIELDS: &str = concat!(
    "bark=Bark, not measured|",
    "height=Height, not measured|",
    "setting=Where it grew|",
    "place=Place, not given|",
    "region=State or country, not given|",
    "walk=Walk, not given|",
    "herbicide=Herbicide, not said|",
    "targets=What it could hit",
);

/// The word that was used instead.
pub fn assumed_word(word: &str) -> Option<&'static str> {
    crate::words::named(ASSUMED_WORDS, word)
}

const ASSUMED_WORDS: &str = concat!(
    "woods=woods|",
    "open=open: yard, street or hedgerow|",
    "north=the northern half of the world|",
    "south=the southern half of the world|",
    "cautious_default=the cautious months|",
    "two_minutes=2 minutes|",
    "not_said=only by a licensed applicator, with the best way without beside it|",
    "not_checked=not checked",
);

/// The field of the form that settles an assumption.
pub fn assumed_path(field: &str) -> &str {
    match field {
        "bark" => "stems[0].bark",
        other => other,
    }
}

impl Say<'_> {
    /// Every input that was given, in the order of the form.
    pub fn told(&self) -> Vec<Input> {
        let q = self.question;
        let units = self.units();
        let mut list = Inputs(Vec::new());
        list.told(
            "species",
            cat!(q.tree.species.name, " (", q.tree.species.scientific, ")"),
        );
        for (at, stem) in q.tree.stems.iter().enumerate() {
            let path = cat!("stems[", measure::number(at as u32), "].");
            let mm = stem.dbh.mm();
            let mut across = cat!(measure::size_read(mm).text(units), " across");
            let mut field = "diameter";
            if stem.from_girth {
                let girth = measure::size_read(mm * core::f64::consts::PI);
                across = cat!(girth.text(units), " around, ", across);
                field = "girth";
            }
            list.told(&cat!(&path, field), across);
            if stem.live_share < 1.0 {
                let share = measure::percent(stem.live_share * 100.0);
                list.told(
                    &cat!(&path, "live_share"),
                    cat!(share, " in 100 of the way round"),
                );
            }
            if let Some(bark) = stem.bark {
                let bark = measure::bark(bark.mm()).text(units);
                list.told(&cat!(path, "bark"), bark);
            }
        }
        list.told(
            "date",
            match q.day {
                Day::On(day) => measure::day_year(day),
                Day::Year { today } => cat!("the year, from ", measure::day_year(today)),
            },
        );
        for (at, target) in q.tree.targets.iter().enumerate() {
            let mut value = match target.distance {
                Some(distance) => cat!(", ", self.length(distance.m())),
                None => ", distance not known".into(),
            };
            value = cat!(&m::reach_target_short(target.kind), value);
            if let Some(slope) = target.slope {
                value = cat!(value, ", slope ", measure::plain(slope.percent(), 0), " %");
            }
            if target.downhill {
                value.push_str(", downhill");
            }
            if let Some(voltage) = target.voltage {
                value = cat!(value, ", ", measure::plain(voltage.kv(), 1), " kV");
            }
            let path = cat!("targets[", measure::number(at as u32), "].");
            list.0.push(Input {
                label: fields::field(&cat!(&path, "kind")),
                field: cat!(path, "distance"),
                value,
            });
        }
        if q.tree.none_in_reach {
            let within = self.reach(self.answer.reach.two_heights_m);
            list.told("none_in_reach", cat!("within ", within));
        }
        if let Some(reply) = q.tree.line_within_reach {
            list.told("line_within_reach", fields::reply(reply).into());
        }
        if let Some(height) = q.tree.height {
            let by = q.height_by.map_or("", fields::height_by);
            let comma = if by.is_empty() { "" } else { ", " };
            list.told("height", cat!(self.length(height.m()), comma, by));
        }
        if let Place::Point {
            latitude,
            longitude,
            elevation,
        } = &q.place
        {
            let mut at = cat!(
                measure::plain(*latitude, 2),
                "°, ",
                measure::plain(*longitude, 2),
                "°"
            );
            if let Some(m) = elevation {
                at = cat!(at, ", ", self.length(*m), " above the sea");
            }
            list.told("place.latitude", at);
        }
        if let Some(region) = &q.region {
            list.told("region", region::region(region).into());
        }
        if let Some(seen) = q.leafed_out {
            let elsewhere = match (seen.elsewhere, seen.rates) {
                (None, _) => "",
                (Some(_), Rates::Fitted) => ", elsewhere",
                (Some(_), Rates::Hopkins) => ", elsewhere, carried by Hopkins' rates",
            };
            list.told(
                "leafed_out.stage",
                cat!(
                    fields::stage(seen.stage),
                    " on ",
                    measure::day_year(seen.date),
                    elsewhere
                ),
            );
        }
        if let Some(table) = &q.spring {
            let days = measure::number(table.days.len() as u32);
            list.told("spring", cat!(days, " days of temperatures"));
        }
        if !q.tree.signs.is_empty() {
            list.told("signs", reach::signs(&q.tree.signs));
        }
        let herbicide = q.tree.herbicide;
        let said = herbicide != Herbicide::NotSaid;
        list.said(said, "herbicide", fields::herbicide(herbicide));
        match q.tree.goal {
            Goal::Wildlife => {}
            Goal::Kill => list.told("goal", "only to kill it".into()),
            Goal::SpareOne(at) => {
                list.told("goal", cat!("keep stem ", measure::number(at as u32 + 1)));
            }
        }
        for (field, value) in [
            ("whole_clone", q.tree.whole_clone),
            ("same_genus_near", q.tree.same_genus_near),
        ] {
            let yes = fields::yes_no(value.unwrap_or_default());
            list.said(value.is_some(), field, yes);
        }
        let said = q.tree.condition != Condition::Alive;
        list.said(said, "condition", fields::life(q.tree.condition));
        let said = q.tree.vigour != Vigour::Ordinary;
        list.said(said, "vigour", fields::vigour(q.tree.vigour));
        let said = q.dry_spell != DrySpell::None;
        list.said(said, "dry_spell", fields::dry(q.dry_spell));
        list.said(
            q.tree.limbs != Limbs::None,
            "limbs",
            fields::limbs(q.tree.limbs),
        );
        if let Some(walk) = q.pace.walk_min {
            let walk = measure::plain(walk, 1);
            list.told("walk", m::effort_walk_given(walk));
        }
        if let Some(timed) = q.timed {
            let minutes = measure::plain(timed.minutes, 1);
            list.told("timed.trees", m::effort_timed_given(timed.trees, minutes));
        } else {
            list.said(q.pace.rate.is_some(), "rate", "from trees that you timed");
        }
        list.said(q.pace.practised, "practised", "yes");
        list.said(q.cannot_wait, "cannot_wait", "yes");
        list.0
    }

    /// Fields left at what they are for most trees: one sentence, for the working and the printed page.
    pub fn left(&self) -> String {
        let q = self.question;
        let mut list: Vec<&str> = Vec::new();
        let mut take = |left: bool, words| {
            if left {
                list.push(words);
            }
        };
        take(q.tree.condition == Condition::Alive, "condition alive");
        take(q.tree.signs.is_empty(), "no signs ticked");
        take(
            q.tree.stems.iter().all(|stem| stem.live_share >= 1.0),
            "bark alive all round",
        );
        take(q.tree.vigour == Vigour::Ordinary, "ordinary growth");
        take(q.dry_spell == DrySpell::None, "no dry spell");
        take(q.tree.limbs == Limbs::None, "no limbs below the ring");
        take(q.tree.goal == Goal::Wildlife, "goal: a standing dead tree");
        take(q.leafed_out.is_none(), "no leaf-out seen");
        take(!q.pace.practised, "one person, not practised");
        take(!q.cannot_wait, "the work can wait");
        cat!("Left as for most trees: ", list.join(", "), ".")
    }

    /// What was not given, and what was used instead: label, value, field.
    pub fn assumed(&self, stops: bool) -> Vec<Input> {
        let value = |it: &Assumed| match (it.field, it.value) {
            ("bark", Some(mm)) => measure::bark(mm).text(self.units()),
            ("height", Some(m)) => cat!(self.length(m), " for what it could reach"),
            (_, Some(value)) => measure::plain(value, 1),
            (_, None) => it.word.and_then(assumed_word).unwrap_or("").into(),
        };
        self.answer
            .assumed
            .iter()
            // A stop rests on the reach alone.
            .filter(|it| !stops || !matches!(it.field, "bark" | "walk" | "herbicide"))
            .map(|it| Input {
                field: assumed_path(it.field).into(),
                label: assumed_field(it.field).unwrap_or(it.field).into(),
                value: value(it),
            })
            .collect()
    }
}
