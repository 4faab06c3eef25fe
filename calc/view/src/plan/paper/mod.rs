//! What a crew takes along on paper: the cover, a sheet a crew and day, the tags. Pages that stand alone and print alone, in
//! one ink, on Letter and on A4.
//!
//! ```text
//! Sheets { file, on_paper, to_fix, .. }   what is printed
//! Sheets::cover(), tags()                 a whole HTML page each
//! Sheets::crew_sheets()                   the sheets of the crews, which are printed some at a time
//! ```

mod cover;
pub(super) mod crew;
mod not_here;
mod style;
mod tags;

use calc::terms::small::order::sort_by_key;
pub use cover::counted;

use crate::measure;
use crate::out::{Html, Out as _};
use crate::page::Page;
use crate::words::message::in_use;
use crate::words::prose::prose;
use crate::words::{Word, group, m, phrase};
use calc::answer::Answer;
use calc::models::cautions::Caution;
use calc::question::settings::AskingGroup;
use calc::reference::Reference;
use calc::terms::method::Method;
use calc::terms::quantity::Units;
use calc::terms::species::Species;
use calc_plan::PlanFile;
use calc_plan::plan_file::shape::TreeOf;
use chrono::{Datelike, NaiveDate};

/// A stem that is ringed.
#[derive(Clone, Copy, Debug)]
pub struct RingedStem {
    /// Across at breast height, mm.
    pub dbh_mm: f64,
    /// Width of the ring, mm.
    pub ring_mm: f64,
}

/// What a sheet says of a tree beyond its plan.
#[derive(Clone, Debug)]
pub struct OnPaper {
    /// Its species.
    pub species: &'static Species,
    /// The stems to ring.
    pub stems: Vec<RingedStem>,
    /// Bystanders stay out to here while anyone works, metres.
    pub people_out_m: f64,
    /// Nothing may stand within this, metres: twice its height.
    pub look_m: f64,
    /// Ids of its cautions on its day.
    pub cautions: Vec<&'static str>,
    /// The note of its row, where it speaks of a danger; else empty.
    pub note: String,
}

impl OnPaper {
    /// Of the answer on the day of its ring.
    #[must_use]
    pub fn of(species: &'static Species, answer: &Answer) -> Self {
        let ringed = answer
            .stems
            .iter()
            .filter(|stem| !stem.spared && stem.headline_method == Method::BarkRing);
        let stems = ringed.filter_map(|stem| {
            Some(RingedStem {
                dbh_mm: stem.dbh_mm,
                ring_mm: stem.ring.as_ref()?.better_mm,
            })
        });
        Self {
            species,
            stems: stems.collect(),
            people_out_m: answer.people_out_m.unwrap_or(answer.reach.two_heights_m),
            look_m: answer.reach.two_heights_m,
            cautions: answer.cautions.iter().map(|line| line.id).collect(),
            note: String::new(),
        }
    }

    /// With the note of its row.
    #[must_use]
    pub fn with_note(mut self, note: &str) -> Self {
        note.clone_into(&mut self.note);
        self
    }
}

/// A row that waits for a fix.
#[derive(Clone, Debug)]
pub struct WaitingRow {
    /// Its tag.
    pub tree_id: String,
    /// Its part of the property.
    pub unit: String,
}

/// What is printed.
pub struct Sheets<'a> {
    /// The tables.
    pub reference: &'static Reference,
    /// The plan.
    pub file: &'a PlanFile,
    /// For each tree of the plan what a sheet says of it; none where it is not ringed or looked at this season.
    pub on_paper: &'a [Option<&'a OnPaper>],
    /// Rows that wait for a fix.
    pub to_fix: &'a [WaitingRow],
    /// The group whose contacts are named.
    pub group: Option<&'a AskingGroup>,
    /// Units that are printed.
    pub units: Units,
}

impl Sheets<'_> {
    /// A tree with what a sheet says of it.
    fn trees(&self) -> impl Iterator<Item = (&TreeOf, &OnPaper)> {
        let both = self.file.trees.iter().zip(self.on_paper);
        both.filter_map(|(tree, on)| Some((tree, (*on)?)))
    }

    /// A page that stands alone.
    fn page(&self, title: &str, body: impl FnOnce(&mut Page<'_>)) -> String {
        let mut html = Html::default();
        html.open("html");
        html.attr("lang", in_use().language());
        html.open("head");
        for (key, value, content) in [
            ("charset", "utf-8", ""),
            ("name", "viewport", "width=device-width, initial-scale=1"),
            ("name", "robots", "noindex"),
        ] {
            html.open("meta");
            html.attr(key, value);
            if !content.is_empty() {
                html.attr("content", content);
            }
            html.close();
        }
        html.open("title");
        html.text(title);
        html.close();
        html.open("style");
        html.text(style::PAPER);
        html.close();
        html.close();
        html.open("body");
        html.open("main");
        let mut page = Page::new(&mut html);
        body(&mut page);
        html.close();
        html.close();
        html.close();
        ["<!doctype html>\n", &html.into_string(), "\n"].concat()
    }

    /// Where it is from, at the head of each page.
    fn made(&self) -> String {
        m::sheets_made(m::SheetsMade {
            list: self.file.list.name.as_str(),
            day: long_day(&self.file.made_on, false),
        })
    }

    /// A distance that is relied on, rounded up.
    fn distance(&self, metres: f64) -> String {
        measure::reach(metres).first(self.units).to_owned()
    }

    /// Sizes, or widths of rings, of a tree's stems.
    fn of_stems(&self, on: &OnPaper, reading: impl Fn(&RingedStem) -> measure::Both) -> String {
        let each: Vec<String> = on
            .stems
            .iter()
            .map(|stem| {
                measure::parted(reading(stem).first(self.units))
                    .0
                    .to_owned()
            })
            .collect();
        phrase::joined_by(&each, "; ")
    }

    fn sizes(&self, on: &OnPaper) -> String {
        self.of_stems(on, |stem| measure::size(stem.dbh_mm))
    }

    fn rings(&self, on: &OnPaper) -> String {
        self.of_stems(on, |stem| measure::ring(stem.ring_mm))
    }

    /// The unit of sizes and rings.
    fn unit(&self) -> &'static str {
        match self.units {
            Units::Us => phrase::INCH,
            Units::Metric => phrase::CM,
        }
    }

    /// How high on the trunk.
    fn up(&self) -> &'static str {
        match self.units {
            Units::Us => m::SHEETS_UP_US.text(),
            Units::Metric => m::SHEETS_UP_METRIC.text(),
        }
    }

    /// Cautions of some trees, each once: what stops and what a day or a species brings first.
    fn cautions<'t>(&self, trees: impl Iterator<Item = &'t OnPaper>) -> Vec<&'static Caution> {
        let mut ids: Vec<&str> = trees.flat_map(|on| on.cautions.iter().copied()).collect();
        ids.sort_unstable();
        ids.dedup();
        let known = self.reference.cautions.iter();
        let mut all: Vec<&'static Caution> = known
            .filter(|caution| ids.binary_search(&caution.id).is_ok())
            .collect();
        sort_by_key(&mut all, |caution| rank(caution));
        all
    }

    /// What a caution says, with the largest distance of its trees.
    fn sentence(&self, caution: &Caution, people_out_m: f64) -> String {
        prose(caution.sentence).replace("{people_out}", &self.distance(people_out_m))
    }

    /// Whom to call: the group's contacts, or lines to fill in; and what to do at a power line.
    fn whom_to_call(&self, page: &mut Page<'_>) {
        page.open_class("p", "call");
        page.leaf("b", m::SHEETS_CALL);
        page.text(" ");
        let contacts = self.group.map(|group| group.settings.contacts.as_slice());
        let named = contacts.unwrap_or(&[]).iter().map(|contact| {
            let name = group::contact(contact);
            match &contact.phone {
                Some(phone) => [name.as_str(), ", ", phone].concat(),
                None => name,
            }
        });
        let mut named: Vec<String> = named.collect();
        if named.is_empty() {
            named.push(m::SHEETS_CALL_BLANK.into());
        }
        named.push(m::SHEETS_CALL_LINE.into());
        page.text(phrase::joined_by(&named, " · "));
        page.close();
    }
}

/// What stops first, then what the species brings, nests and bats, the look up; the rest behind.
fn rank(caution: &Caution) -> u8 {
    match caution.id {
        "HZ3" => 0,
        id if id.starts_with("DZ") => 1,
        "LW5" | "LW6" | "LW10" => 2,
        id if id.starts_with("TX") || id.starts_with("TH") => 3,
        "HZ5" | "ED2" | "ED4" => 4,
        _ => 5,
    }
}

/// A caution in two or three words.
fn short(caution: &Caution) -> &'static str {
    m::cautions_short(caution.id).map_or("", Word::text)
}

/// A day as a person says it: `Saturday 8 May 2027`, or without its day of the week.
fn long_day(iso: &str, with_week_day: bool) -> String {
    let Ok(day) = calc::question::read_day(iso) else {
        return iso.to_owned();
    };
    if with_week_day {
        [week_day(day), " ", &measure::day_year(day)].concat()
    } else {
        measure::day_year(day)
    }
}

fn week_day(day: NaiveDate) -> &'static str {
    let at = day.weekday().num_days_from_monday() as usize;
    m::SHEETS_WEEK_DAYS.text().split(' ').nth(at).unwrap_or("")
}

/// An empty box to tick.
fn tick_box(page: &mut Page<'_>) {
    page.open_class("span", "box");
    page.close();
}
