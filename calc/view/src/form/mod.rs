//! The form as markup, and what stands in it.
//!
//! ```text
//! form::form(out, reference, &typed, &options)   the whole form, filled from a question as typed
//! Sheet                                          what stands in each control, character by character
//! Sheet::typed(&self, reference, today) -> Typed what that says, as a question
//! View::new(reference, &sheet, &options)         the form and its living parts
//! frame(out, lang, Some(&view))                  the same with what stands around it, for a page that is built
//! matters(reference, &typed) -> FieldSet         the fields that some rule reads for this tree
//! Draft::of(reference, &typed, &options) -> Draft an answer to what is there so far: tapes, assumptions
//! ```
//!
//! Every control carries the path of its field as `name` (`targets[1].distance`) and [`crate::field_id`]
//! of it as `id`. Nothing that is typed is ever rewritten: the unit beside a field says what its number
//! means. What follows the typing (tapes, lists, assumptions, echoes) stands in parts and lines with ids
//! of their own, so that a live page redraws those and leaves the controls alone.

mod aids;
mod day;
mod draft;
mod field;
mod frame;
mod item;
mod length;
mod lines;
mod more;
mod place;
mod relevant;
mod sheet;
mod species;
#[cfg(test)]
mod tests;
mod town;
mod tree;

pub use aids::{TIMED_FILE_ID, TIMED_LINE, timed_from};
pub use day::leaf_out::FILE_ID;
pub use day::month_first;
pub use draft::Draft;
pub use frame::{BUILT, PRESSED, frame};
pub use place::named::region_of as region_named;
pub use relevant::{Field, FieldSet, matters};
pub(crate) use sheet::whole;
pub use sheet::{
    ASK_CLONE, ASK_FAR, ASK_HEIGHT, ASK_KIND, ASK_LINE, ASK_NOTHING, ASK_REGION, Sheet, Unfinished,
};
pub use town::{MOST, PLACED, POSITION_ID, SEARCHES, Search, Towns, filled, has_towns};

use crate::kind::{FormGroup, Kind};
use crate::out::Out;
use crate::page::Page;
use crate::words::m;
use calc::models::season::Local;
use calc::question::{Question, Typed, settings};
use calc::reference::Reference;
use chrono::NaiveDate;
use item::Item;

/// How the form is shown.
#[derive(Clone, Copy, Debug)]
pub struct FormOptions<'a> {
    /// The group whose settings the page has.
    pub group: Option<&'a settings::AskingGroup>,
    /// Language tag of the page: decides the order of a date's parts.
    pub lang: &'a str,
    /// Which calculator asks.
    pub kind: Kind,
    /// Level of the heading of one that has a heading of its own, 2 to 5.
    pub heading_level: u8,
    /// The reader's today.
    pub today: NaiveDate,
    /// What is known of the place of a question; see [`no_table`] where nothing is.
    pub local: fn(&Question) -> Local,
    /// Whether an answer stands below, so that a next tree can be asked for.
    pub answered: bool,
    /// The reader's country (ISO 3166-1), or empty: its towns are looked up first.
    pub country: &'a str,
    /// Looks up the towns of a country whose name was typed so far; none where no list can be had.
    pub towns: Option<fn(country: &str, typed: &str) -> Towns>,
    /// Whether the device can be asked where it is.
    pub position: bool,
    /// Regions (ISO 3166) near a point, each with the distance of its nearest town, km, as far as the lists are at
    /// hand. Those that are not are asked for, unless the region that stands can be right.
    pub near: fn(latitude: f64, longitude: f64, stands: &str) -> Vec<(String, f64)>,
    /// Whether the page may keep on the device what its reader says.
    pub keeps: bool,
    /// Whether the first names are shown before any is typed: the reader has been in the field.
    pub listed: bool,
    /// Whether it is drawn when the page is built, before it is known who reads it and on which day.
    pub built: bool,
}

impl FormOptions<'_> {
    /// Those of a tree plan that stands by itself: no group, no lists at hand, nothing kept and nothing answered yet.
    #[must_use]
    pub fn alone(today: NaiveDate) -> Self {
        Self {
            group: None,
            lang: "",
            kind: Kind::TreePlan,
            heading_level: 2,
            today,
            local: no_table,
            answered: false,
            country: "",
            towns: None,
            position: false,
            near: |_, _, _| Vec::new(),
            keeps: false,
            listed: false,
            built: false,
        }
    }
}

/// What is known of a place where no table of climate is at hand.
#[must_use]
pub fn no_table(_: &Question) -> Local {
    Local::default()
}

/// Writes the whole form, filled from a question as typed.
pub fn form(
    out: &mut dyn Out,
    reference: &'static Reference,
    typed: &Typed,
    options: &FormOptions<'_>,
) {
    let sheet = Sheet::of(reference, typed, options.today);
    View::new(reference, &sheet, options).form(out);
}

/// A part of the form that follows what is typed. Its element has [`Part::id`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The species that match what is typed.
    Species,
    /// Size, bark and live share of each stem behind the first.
    StemsMore,
    /// Slopes, and the things behind the nearest.
    Targets,
    /// The goal, which names the stems.
    Goal,
    /// The towns that match what is typed.
    Towns,
    /// The same for the place where the leaves were seen.
    SeenTowns,
    /// The regions that a point may lie in.
    Near,
}

impl Part {
    /// Every part.
    pub const ALL: [Self; 7] = [
        Self::Species,
        Self::StemsMore,
        Self::Targets,
        Self::Goal,
        Self::Towns,
        Self::SeenTowns,
        Self::Near,
    ];

    /// The id of its element.
    #[must_use]
    pub fn id(self) -> &'static str {
        match self {
            Self::Species => "l-species",
            Self::StemsMore => "l-stems-more",
            Self::Targets => "l-targets",
            Self::Goal => "l-goal",
            Self::Towns => "l-towns",
            Self::SeenTowns => "l-seen-towns",
            Self::Near => "l-near",
        }
    }
}

/// What is shown while the sheet is so.
const WHILE: [(&str, item::Test); 4] = [
    (species::UNKNOWN_ID, species::unknown),
    (place::FAR_ID, place::has_distance),
    (day::leaf_out::SEEN_ID, day::leaf_out::any),
    (day::leaf_out::ELSEWHERE_ID, day::leaf_out::elsewhere),
];

/// The form over a sheet: what is shown, and what the tapes and lines beside it say.
pub struct View<'a> {
    pub(crate) reference: &'static Reference,
    pub(crate) sheet: &'a Sheet,
    pub(crate) options: &'a FormOptions<'a>,
    pub(crate) set: FieldSet,
    pub(crate) draft: Draft,
    pub(crate) towns: [Towns; 2],
    pub(crate) near: Vec<&'static str>,
    lines: Vec<(String, String)>,
}

impl<'a> View<'a> {
    /// Works out what the form shows.
    #[must_use]
    pub fn new(
        reference: &'static Reference,
        sheet: &'a Sheet,
        options: &'a FormOptions<'a>,
    ) -> Self {
        let typed = sheet.typed(reference, options.today);
        let mut view = Self {
            reference,
            sheet,
            options,
            set: matters(reference, &typed),
            draft: Draft::of(reference, &typed, options),
            towns: Default::default(),
            near: Vec::new(),
            lines: Vec::new(),
        };
        for (at, search) in town::SEARCHES.iter().enumerate() {
            view.towns[at] = town::look(&view, search);
        }
        view.near = place::region::look(&view);
        view.lines = lines::lines(&view);
        view
    }

    /// Writes the whole form.
    pub fn form(&self, out: &mut dyn Out) {
        let out = &mut Page::new(out);
        let whole = self.options.kind == Kind::TreePlan;
        if !whole {
            let asks = crate::words::calculators::asks(self.options.kind);
            out.heading(self.options.heading_level, "", "", &asks);
        }
        out.open_class("form", "ask");
        out.attr("part", "form");
        out.attr("novalidate", "");
        out.attr("autocomplete", "off");
        self.questions(out, true);
        out.open_class("div", "go");
        out.open_class("button", "btn");
        out.attr(
            "type",
            if self.options.built {
                "button"
            } else {
                "submit"
            },
        );
        out.text(if whole {
            m::FORM_SHOW
        } else {
            m::FORM_SHOW_ANSWER
        });
        out.close();
        if self.options.built {
            frame::soon(out);
        }
        field::button(out, "next", None, &m::FORM_NEXT, !self.options.answered);
        out.leaf_class("p", "soft", if whole { m::FORM_START } else { m::FORM_TWO });
        out.close();
        out.open_class("details", "more");
        out.open("summary");
        out.leaf("b", m::FORM_MORE);
        out.open_class("span", "soft");
        out.attr("id", more::ROWS_ID);
        out.text(more::rows_line(self));
        out.close();
        out.close();
        self.questions(out, false);
        self.items(out, more::ROWS);
        if !self.options.kind.asks(FormGroup::Work) {
            self.items(out, more::CREW_ROW);
        }
        out.close_two();
    }

    /// The questions that stand in front, or those of them that this calculator has in the folded part.
    fn questions(&self, out: &mut Page<'_>, front: bool) {
        const GROUPS: [&[Item]; 5] = [
            tree::GROUP,
            town::GROUP,
            place::GROUP,
            day::GROUP,
            more::CREW,
        ];
        out.open_class("div", "rows");
        for (group, items) in FormGroup::ALL.into_iter().zip(GROUPS) {
            let asks = self.options.kind.asks(group);
            if asks == front && (front || group != FormGroup::Work) {
                self.items(out, items);
            }
        }
        out.close();
    }

    /// Writes the content of one part.
    pub fn part(&self, out: &mut dyn Out, part: Part) {
        self.inside(&mut Page::new(out), part);
    }

    fn inside(&self, out: &mut Page<'_>, part: Part) {
        match part {
            Part::Species => species::list(self, out),
            Part::StemsMore => tree::stems_more(self, out),
            Part::Targets => place::targets_more(self, out),
            Part::Goal => more::goal(self, out),
            Part::Towns => town::list(self, out, 0),
            Part::SeenTowns => town::list(self, out, 1),
            Part::Near => place::region::list(self, out),
        }
    }

    /// Writes a part with its element.
    fn whole_part(&self, out: &mut Page<'_>, part: Part) {
        out.open("div");
        out.attr("id", part.id());
        self.inside(out, part);
        out.close();
    }

    /// The lines that follow what is typed: id and text; an empty line is not shown.
    #[must_use]
    pub fn lines(&self) -> &[(String, String)] {
        &self.lines
    }

    /// The codes of the regions that are proposed for the point, in the order of their buttons.
    #[must_use]
    pub fn near(&self) -> &[&'static str] {
        &self.near
    }

    /// The text of a line.
    fn line(&self, id: &str) -> &str {
        let found = self.lines.iter().find(|(known, _)| known == id);
        found.map_or("", |(_, text)| text)
    }

    /// Which elements that depend on the tree are shown: the id of each, and whether it is.
    #[must_use]
    pub fn shown(&self) -> Vec<(String, bool)> {
        let mut shown: Vec<(String, bool)> = Field::ALL
            .iter()
            .map(|field| (field.id().to_owned(), self.shows(*field)))
            .collect();
        for at in 0..self.sheet.count("stems") {
            for field in [Field::Bark, Field::LiveShare] {
                shown.push((tree::stem_id(field, at), self.shows(field)));
            }
        }
        for at in 0..self.sheet.count("targets") {
            shown.push((place::voltage_id(at), place::is_line(self.sheet, at)));
        }
        for (id, so) in &WHILE {
            shown.push(((*id).to_owned(), so(self.sheet)));
        }
        shown.extend(aids::shown(self.sheet));
        shown
    }

    /// Whether a field is shown.
    fn shows(&self, field: Field) -> bool {
        let odd = || {
            let height = self.draft.whole().map(|answer| &answer.height);
            self.sheet.ticked("height_confirmed") || height.is_some_and(|height| height.ask_again)
        };
        self.set.holds(field) && (field != Field::Confirmed || odd())
    }
}
