// What the reader of lists knows: which header means which column, and what a word in a cell means. The build packs it
// into a file of its own, so that a program which reads no list doesn't carry it.

/// What a column of a list holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    /// The tree's tag.
    TreeId,
    /// A name of any kind, or a code.
    Species,
    /// A scientific name.
    Scientific,
    /// A common name.
    Common,
    /// The genus alone.
    Genus,
    /// The epithet alone.
    Epithet,
    /// The cultivar.
    Cultivar,
    /// A code of the species.
    Code,
    /// Diameter at breast height.
    Dbh,
    /// Girth at breast height.
    Girth,
    /// A class of sizes.
    SizeClass,
    /// The unit of the size.
    DbhUnit,
    /// Basal area: it proves a unit, and is no size.
    BasalArea,
    /// Where on the trunk it was measured.
    MeasuredAt,
    /// How many stems.
    Stems,
    /// Total height.
    Height,
    /// Bark thickness.
    Bark,
    /// Alive, declining, dead.
    Condition,
    /// Yes where the tree is dead.
    Dead,
    /// Yes where it is alive.
    Alive,
    /// How far the work is, or what became of the tree.
    Status,
    /// What stands at the planting place.
    Planting,
    /// The lean.
    Lean,
    /// What it could hit.
    Target,
    /// How far that is.
    TargetDistance,
    /// How steep the ground is.
    Slope,
    /// A wire there.
    Wires,
    /// Whether any line is within reach.
    LineWithinReach,
    /// Latitude.
    Lat,
    /// Longitude.
    Lon,
    /// Latitude and longitude in one cell.
    Point,
    /// Metres of a map projection: kept, not mapped.
    Projected,
    /// How exact the place is, metres.
    CoordM,
    /// Height above the sea.
    Elevation,
    /// A place.
    Site,
    /// Code of the state or country that it stands in.
    Region,
    /// A part of the property, or the unit of the size.
    Unit,
    /// Who works there.
    Crew,
    /// Minutes of walking from the tree before.
    WalkMin,
    /// When it was seen or measured.
    SurveyDate,
    /// When it was planted.
    Planted,
    /// A diameter, or a day (Spanish, Portuguese).
    Dia,
    /// The planned day.
    Date,
    /// The day when it was done.
    DoneDate,
    /// Who did it.
    DoneBy,
    /// How urgent.
    Priority,
    /// Outlying, edge, inside.
    Position,
    /// Whether every stem of the clone can be ringed.
    WholeClone,
    /// Whether trees of its genus stand near.
    SameGenusNear,
    /// Notes: never parsed.
    Notes,
    /// A count of trees: not a list of trees.
    Count,
    /// People: never in a shared file.
    People,
    /// Kept as it is, not read.
    Keep,
}

impl Column {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::TreeId,
        Self::Species,
        Self::Scientific,
        Self::Common,
        Self::Genus,
        Self::Epithet,
        Self::Cultivar,
        Self::Code,
        Self::Dbh,
        Self::Girth,
        Self::SizeClass,
        Self::DbhUnit,
        Self::BasalArea,
        Self::MeasuredAt,
        Self::Stems,
        Self::Height,
        Self::Bark,
        Self::Condition,
        Self::Dead,
        Self::Alive,
        Self::Status,
        Self::Planting,
        Self::Lean,
        Self::Target,
        Self::TargetDistance,
        Self::Slope,
        Self::Wires,
        Self::LineWithinReach,
        Self::Lat,
        Self::Lon,
        Self::Point,
        Self::Projected,
        Self::CoordM,
        Self::Elevation,
        Self::Site,
        Self::Region,
        Self::Unit,
        Self::Crew,
        Self::WalkMin,
        Self::SurveyDate,
        Self::Planted,
        Self::Dia,
        Self::Date,
        Self::DoneDate,
        Self::DoneBy,
        Self::Priority,
        Self::Position,
        Self::WholeClone,
        Self::SameGenusNear,
        Self::Notes,
        Self::Count,
        Self::People,
        Self::Keep,
    ];

    /// Their canonical names, in the same order.
    pub const NAMES: &'static [&'static str] = &[
        "tree_id",
        "species",
        "scientific",
        "common",
        "genus",
        "epithet",
        "cultivar",
        "code",
        "dbh",
        "girth",
        "size_class",
        "dbh_unit",
        "basal_area",
        "measured_at",
        "stems",
        "height",
        "bark",
        "condition",
        "dead",
        "alive",
        "status",
        "planting",
        "lean",
        "target",
        "target_distance",
        "slope",
        "wires",
        "line_within_reach",
        "lat",
        "lon",
        "point",
        "projected",
        "coord_m",
        "elevation",
        "site",
        "region",
        "unit",
        "crew",
        "walk_min",
        "survey_date",
        "planted",
        "dia",
        "date",
        "done_date",
        "done_by",
        "priority",
        "position",
        "whole_clone",
        "same_genus_near",
        "notes",
        "count",
        "people",
        "keep",
    ];

    /// The column of a canonical name.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        let at = Self::NAMES.iter().position(|known| *known == name)?;
        Self::ALL.get(at).copied()
    }

    /// Its canonical name.
    #[must_use]
    pub fn name(self) -> &'static str {
        Self::NAMES[self as usize]
    }
}

/// What a word of a cell, or one in a header, is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum WordKind {
    /// Stands for nothing.
    Missing,
    /// A formula that the spreadsheet lost.
    Broken,
    /// A mark that is no tag.
    NoTag,
    /// No tree stands there.
    NotTree,
    /// The tree is dead: standing or fallen.
    Dead,
    /// Alive, declining, unknown.
    Condition,
    /// The lean.
    Lean,
    /// A target.
    Target,
    /// A line.
    Line,
    /// Yes or no.
    YesNo,
    /// How far the work is.
    Status,
    /// The name is not known; a group, where the word says one.
    UnknownName,
    /// Several stems without their sizes.
    SeveralStems,
    /// A note that may say that the tree is gone.
    NoteGone,
    /// A word for a stem.
    StemWord,
    /// A row of totals.
    Total,
    /// A word of a header: its column tells of wires.
    WiresHeader,
    /// A word of a header: its column tells of people.
    PeopleHeader,
    /// A text that speaks of a wire overhead.
    NoteWire,
    /// A text with such a word in it that speaks of none: a fence, a line in the ground.
    NoteNoWire,
    /// A text that speaks of a broken or hung part.
    NoteFault,
    /// A word that denies what its clause speaks of, or one that may stand beside it.
    Denial,
    /// A fault of trunk or crown, as the question has them.
    Sign,
    /// A text that asks to leave the tree.
    NoteKeep,
    /// A word of a header: its column has distances.
    DistanceHeader,
    /// Ground that is level, or as steep as a word says.
    Slope,
}

impl WordKind {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::Missing,
        Self::Broken,
        Self::NoTag,
        Self::NotTree,
        Self::Dead,
        Self::Condition,
        Self::Lean,
        Self::Target,
        Self::Line,
        Self::YesNo,
        Self::Status,
        Self::UnknownName,
        Self::SeveralStems,
        Self::NoteGone,
        Self::StemWord,
        Self::Total,
        Self::WiresHeader,
        Self::PeopleHeader,
        Self::NoteWire,
        Self::NoteNoWire,
        Self::NoteFault,
        Self::Denial,
        Self::Sign,
        Self::NoteKeep,
        Self::DistanceHeader,
        Self::Slope,
    ];

    /// Their words in the table, in the same order.
    pub const NAMES: &'static [&'static str] = &[
        "missing",
        "broken",
        "no_tag",
        "not_tree",
        "dead",
        "condition",
        "lean",
        "target",
        "line",
        "yes_no",
        "status",
        "unknown_name",
        "several_stems",
        "note_gone",
        "stem_word",
        "total",
        "wires_header",
        "people_header",
        "note_wire",
        "note_no_wire",
        "note_fault",
        "denial",
        "sign",
        "note_keep",
        "distance_header",
        "slope",
    ];

    /// The kind of a word in the table.
    #[must_use]
    pub fn parse(name: &str) -> Option<Self> {
        let at = Self::NAMES.iter().position(|known| *known == name)?;
        Self::ALL.get(at).copied()
    }
}

/// A header and the column that it means.
#[derive(Debug)]
pub struct HeaderWord {
    /// The header, folded: small letters without accents, letters and digits only.
    pub key: &'static str,
    /// Its column.
    pub column: Column,
    /// The unit that such a header implies: `cm`, `in`, `m`, `ft`; empty where none.
    pub unit: &'static str,
    /// The language of the header.
    pub language: &'static str,
}

/// A word in a cell and what it means.
#[derive(Debug)]
pub struct CellWord {
    /// What it is for.
    pub kind: WordKind,
    /// The word, folded: small letters without accents; signs stay.
    pub word: &'static str,
    /// What it means; empty where the kind says all.
    pub means: &'static str,
}

/// All that the reader of lists knows.
#[derive(Debug)]
pub struct ListTables {
    /// Sorted by key.
    pub headers: &'static [HeaderWord],
    /// Sorted by kind and word.
    pub words: &'static [CellWord],
    /// Symbols of plants that tables of ours name, in capitals, sorted: a column of other codes is local.
    pub symbols: &'static [&'static str],
    /// What a plan of many trees assumes, sorted by name.
    pub assumed: &'static [AssumedNumber],
}

/// A number that a plan of many trees assumes: a row of `content/rules/plan_constants.csv`.
#[derive(Debug)]
pub struct AssumedNumber {
    /// Its name: that of its field in [`PlanConstants`].
    pub name: &'static str,
    /// The number.
    pub value: f64,
    /// Its unit; `1` for a share.
    pub unit: &'static str,
}

calc::constants! {
    /// What a plan of many trees assumes; content/rules/plan_constants.csv says where each comes from.
    pub struct PlanConstants {
        /// Minutes of each person and day that go into arriving, tools and talk.
        pub ready_minutes: f64,
        /// A crew may go over its share of a day's minutes by this share, so that every task finds one.
        pub over: f64,
        /// What of a tree's value is left after a year of waiting.
        pub discount: f64,
        /// What a tree of an outlying patch counts; one inside counts 1.
        pub outlying: f64,
        /// What a tree at the edge counts.
        pub edge: f64,
        /// Two probabilities of slip that differ by less are alike.
        pub step: f64,
        /// Person-minutes that a visit is charged more, where the crew is in no other place of that unit on the day.
        pub enter_to_visit: f64,
        /// The same for a ring.
        pub enter_to_ring: f64,
        /// Minutes that a walk from one tree to the next takes at most.
        pub walk_leg_most: f64,
        /// A point that may be off by more metres says nothing of a walk.
        pub walk_coord: f64,
        /// Ways are drawn on days of whose trees at least this share has a point of its own.
        pub walk_share: f64,
        /// Years whose visits are part of a plan, that of the rings included.
        pub plan_years: f64,
        /// A share of trees is told from so many on that were looked at; of fewer only counts.
        pub share_fewest: f64,
        /// Share of a unit's land that stays under crowns, where somebody asks for a floor.
        pub canopy_floor: f64,
        /// Share of its basal area that stays then.
        pub basal_floor: f64,
        /// Between trees that are planted where others died, until somebody says how far: feet.
        pub plant_feet: f64,
        /// The same for who counts in metres.
        pub plant_metres: f64,
        /// People on a work day, until somebody says how many.
        pub crew_people: f64,
        /// Hours of a work day, until somebody says how long.
        pub crew_hours: f64,
        /// So many more people are tried.
        pub more_people: f64,
        /// Person-minutes of a minute at a tree, where two work at it.
        pub pair_heads: f64,
        /// The highest threshold of slip that may be asked for.
        pub slip_most: f64,
        /// The nearest distance that is said once for a unit, m.
        pub said_from: f64,
        /// The farthest.
        pub said_to: f64,
        /// Days further apart are of two seasons.
        pub season_apart: f64,
        /// Share of the most trees of any day with which a day is offered.
        pub good_share: f64,
    }
}

/// Small letters without accents; every other sign stays. Headers and words are compared by it.
#[must_use]
pub fn fold(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            'A'..='Z' => folded.push(c.to_ascii_lowercase()),
            'á' | 'à' | 'â' | 'ä' | 'ã' | 'å' | 'Á' | 'À' | 'Â' | 'Ä' | 'Ã' | 'Å' => {
                folded.push('a')
            }
            'é' | 'è' | 'ê' | 'ë' | 'É' | 'È' | 'Ê' | 'Ë' => folded.push('e'),
            'í' | 'ì' | 'î' | 'ï' | 'Í' | 'Ì' | 'Î' | 'Ï' => folded.push('i'),
            'ó' | 'ò' | 'ô' | 'ö' | 'õ' | 'Ó' | 'Ò' | 'Ô' | 'Ö' | 'Õ' => folded.push('o'),
            'ú' | 'ù' | 'û' | 'ü' | 'Ú' | 'Ù' | 'Û' | 'Ü' => folded.push('u'),
            'ñ' | 'Ñ' => folded.push('n'),
            'ç' | 'Ç' => folded.push('c'),
            'ß' => folded.push_str("ss"),
            'º' | '°' => folded.push('o'),
            // Accents that stand behind their letter.
            '\u{300}'..='\u{36f}' => {}
            '\u{a0}' | '\u{2007}' | '\u{202f}' | '\t' | '\n' | '\r' => folded.push(' '),
            '‘' | '’' | '´' | '`' => folded.push('\''),
            '“' | '”' => folded.push('"'),
            '–' | '—' | '‐' | '‑' | '−' => folded.push('-'),
            c => folded.push(c),
        }
    }
    folded
}

/// A header as its key: folded, letters and digits only.
#[must_use]
pub fn header_key(header: &str) -> String {
    let folded = fold(header);
    let kept = folded.chars().filter(char::is_ascii_alphanumeric);
    kept.collect()
}
