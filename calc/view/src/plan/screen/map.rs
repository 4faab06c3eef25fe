//! Where the trees stand, drawn from the points of the list alone: no tiles, no house and no path, since a target has a
//! distance and no place. North is up; a table says the same.

use super::{fold_of_rows, open_fold_at, open_rows, short_day, turn_button, turn_buttons};
use crate::draw::pen::{Anchor, Pen};
use crate::measure::length;
use crate::page::Page;
use crate::plan::geojson::EARTH_M;
use crate::plan::made::Made;
use crate::plan::read::{Listed, ReadList};
use crate::words::phrase::first_of;
use crate::words::{Word, m};
use calc::terms::quantity::{M_PER_FT, Units};
use calc::terms::small::order::sort_by_key;
use calc_plan::CountedAs;
use std::collections::BTreeMap;

/// The name of the drawing, and of its table, as the page asks for them.
pub const MAP: &str = "map";
/// The same of the table.
pub const PLACES: &str = "places";

/// Width of the drawing, and its greatest height.
const WIDE: f64 = 360.0;
const HIGH: f64 = 420.0;
/// Room round the points.
const ROOM: f64 = 26.0;
/// The least stretch that is drawn, metres.
const LEAST_M: f64 = 30.0;
/// Up to so many trees their tags are written.
const TAGS: usize = 14;
/// Up to so many of a work day their turn is written.
const TURNS: usize = 40;
/// From so many points on a grid of counts is drawn.
const GRID_FROM: usize = 1_500;
/// Cells of the grid from side to side.
const CELLS: f64 = 12.0;
/// So many trees without a place are named.
const UNPLACED: usize = 30;
/// Lengths of the scale, in feet or metres.
const SCALES: [f64; 10] = [
    10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0, 20000.0,
];

/// A tree on the map.
struct Placed<'a> {
    at: usize,
    tag: &'a str,
    unit: &'a str,
    /// Metres east and north of the middle of the list.
    east: f64,
    north: f64,
    /// How far they may be off, metres.
    off_m: f64,
    reason: CountedAs,
    day: Option<&'a str>,
    turn: Option<(u32, usize)>,
    zone_m: Option<f64>,
}

/// The trees with a place, in the order of their rows; and the tags of those without.
fn placed<'a>(list: &'a ReadList, made: &'a Made) -> (Vec<Placed<'a>>, Vec<&'a str>) {
    let (mut all, mut without) = (Vec::new(), Vec::new());
    for line in &list.lines {
        let Listed::Row(_, row, Some(at)) = line else {
            continue;
        };
        let tree = &list.trees[*at];
        let Some((latitude, longitude)) = row.tag.point else {
            without.push(tree.tree_id.as_str());
            continue;
        };
        let of_plan = &made.file.trees[*at];
        all.push(Placed {
            at: *at,
            tag: &tree.tree_id,
            unit: &tree.unit,
            east: longitude,
            north: latitude,
            off_m: row.tag.coord_m.unwrap_or(0.0),
            reason: made.planned.reasons[*at],
            day: of_plan.day.as_deref(),
            turn: of_plan.team.zip(of_plan.order),
            zone_m: list.zones[*at],
        });
    }
    let middle = |of: fn(&Placed<'_>) -> f64| {
        let (low, high) = span(all.iter().map(of));
        f64::midpoint(low, high)
    };
    let (latitude, longitude) = (middle(|it| it.north), middle(|it| it.east));
    let shrinks = libm::cos(latitude.to_radians());
    for it in &mut all {
        it.east = EARTH_M * shrinks * (it.east - longitude).to_radians();
        it.north = EARTH_M * (it.north - latitude).to_radians();
    }
    (all, without)
}

fn span(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), it| {
        (low.min(it), high.max(it))
    })
}

/// Metres to the points of a drawing.
struct Ground {
    west: f64,
    top: f64,
    scale: f64,
    high: f64,
}

impl Ground {
    fn of(trees: &[&Placed<'_>]) -> Self {
        let (west, east) = span(trees.iter().map(|it| it.east));
        let (south, north) = span(trees.iter().map(|it| it.north));
        let wide = (east - west).max(LEAST_M);
        let tall = (north - south).max(LEAST_M);
        let scale = ((WIDE - 2.0 * ROOM) / wide).min((HIGH - 2.0 * ROOM) / tall);
        let high = (tall * scale + 2.0 * ROOM).clamp(120.0, HIGH);
        Self {
            west: f64::midpoint(west, east) - WIDE / 2.0 / scale,
            top: f64::midpoint(south, north) + high / 2.0 / scale,
            scale,
            high,
        }
    }

    fn at(&self, east: f64, north: f64) -> (f64, f64) {
        (
            (east - self.west) * self.scale,
            (self.top - north) * self.scale,
        )
    }
}

/// The fold; its drawing comes when it is opened.
pub(super) fn fold(out: &mut Page<'_>, list: &ReadList, made: &Made) {
    let (trees, without) = placed(list, made);
    if trees.is_empty() {
        return;
    }
    let line = m::property_map_line(m::PropertyMapLine {
        placed: trees.len().to_string(),
        without: without.len().to_string(),
    });
    fold_of_rows(out, MAP, &m::PROPERTY_MAP, &line);
}

/// The drawing: of all trees, or of a work day by its number, from 1.
pub fn map(out: &mut Page<'_>, list: &ReadList, made: &Made, units: Units, day: usize) {
    let (all, without) = placed(list, made);
    let days: Vec<&str> = work_days(made).collect();
    let on = day.checked_sub(1).and_then(|at| days.get(at).copied());
    let trees: Vec<&Placed<'_>> = all
        .iter()
        .filter(|it| on.is_none() || it.day == on)
        .collect();
    if !trees.is_empty() {
        figure(out, &trees, on, units);
    }
    out.open_class("div", "picks");
    turn_button(out, MAP, 0, &m::PROPERTY_MAP_ALL);
    for (at, day) in days.iter().enumerate() {
        turn_button(out, MAP, at + 1, &short_day(day));
    }
    out.close();
    if !without.is_empty() {
        let trees = without.len().to_string();
        let tags = first_of(without, UNPLACED, ", ");
        out.p_class("soft", m::property_map_without(trees, tags));
    }
    open_fold_at(
        out,
        4,
        "places",
        &m::PROPERTY_PLACES,
        &m::property_trees(all.len().to_string()),
        None,
    );
    out.open("div");
    out.attr("id", &["t-", PLACES].concat());
    table_of(out, list, &all, units, 0);
    out.close_all(3);
}

/// Work days on which a tree is ringed.
fn work_days(made: &Made) -> impl Iterator<Item = &str> {
    let days = made.file.work_days.iter();
    days.filter(|day| day.agreed && day.rings > 0.0)
        .map(|day| day.day.as_str())
}

/// How a tree is drawn.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Sign {
    Ring,
    Professional,
    Unknown,
    Standing,
    Other,
}

impl Sign {
    fn of(reason: CountedAs) -> Self {
        match reason {
            CountedAs::Planned => Self::Ring,
            CountedAs::Professional => Self::Professional,
            CountedAs::CannotTell => Self::Unknown,
            CountedAs::Dead | CountedAs::Done => Self::Standing,
            CountedAs::NoHours
            | CountedAs::NoDay
            | CountedAs::Pacing
            | CountedAs::OtherMethod
            | CountedAs::LeaveIt
            | CountedAs::Skipped => Self::Other,
        }
    }

    fn word(self) -> Word {
        match self {
            Self::Ring => m::PROPERTY_MAP_RING,
            Self::Professional => m::PROPERTY_MAP_PROFESSIONAL,
            Self::Unknown => m::PROPERTY_MAP_UNKNOWN,
            Self::Standing => m::PROPERTY_MAP_STANDING,
            Self::Other => m::PROPERTY_MAP_OTHER,
        }
    }

    fn draw(self, pen: &mut Pen<'_>, x: f64, y: f64) {
        match self {
            Self::Ring => pen.circle("fgo rim", x, y, 4.5),
            Self::Professional => {
                let (a, b) = (5.5, 2.3);
                pen.shape(
                    "fstop rim",
                    "M##L##L##L##L##L##L##L##Z",
                    &[
                        x - b,
                        y - a,
                        x + b,
                        y - a,
                        x + a,
                        y - b,
                        x + a,
                        y + b,
                        x + b,
                        y + a,
                        x - b,
                        y + a,
                        x - a,
                        y + b,
                        x - a,
                        y - b,
                    ],
                );
            }
            Self::Unknown => pen.circle("s fp d5", x, y, 4.5),
            Self::Standing => pen.shape(
                "s",
                "M##L##M##L##",
                &[
                    x - 4.0,
                    y - 4.0,
                    x + 4.0,
                    y + 4.0,
                    x - 4.0,
                    y + 4.0,
                    x + 4.0,
                    y - 4.0,
                ],
            ),
            Self::Other => pen.rect("s fp", [x - 3.5, y - 3.5, 7.0, 7.0], ""),
        }
    }
}

fn figure(out: &mut Page<'_>, trees: &[&Placed<'_>], on: Option<&str>, units: Units) {
    let ground = Ground::of(trees);
    let grid = trees.len() > GRID_FROM;
    out.open("figure");
    let count = trees.len().to_string();
    let title = match on {
        Some(day) => m::property_map_day(short_day(day), count),
        None => m::property_map_of(count),
    };
    let mut pen = Pen { out: out.sink() };
    pen.svg("d map", WIDE, ground.high + 30.0, &title);
    if grid {
        counts(&mut pen, &ground, trees);
    } else {
        points(&mut pen, &ground, trees, on.is_some());
    }
    if on.is_none() {
        names(&mut pen, &ground, trees);
    }
    frame(&mut pen, &ground, units);
    pen.end();
    let mut signs: BTreeMap<Sign, usize> = BTreeMap::new();
    for it in trees {
        *signs.entry(Sign::of(it.reason)).or_default() += 1;
    }
    out.open("figcaption");
    out.text(if grid {
        m::PROPERTY_MAP_GRID
    } else {
        m::PROPERTY_MAP_CIRCLES
    });
    out.close();
    if !grid {
        out.open_class("ul", "key");
        for (sign, count) in signs {
            out.open("li");
            let mut pen = Pen { out: out.sink() };
            pen.svg("gm", 34.0, 18.0, "");
            sign.draw(&mut pen, 17.0, 9.0);
            pen.end();
            out.leaf(
                "span",
                [sign.word().text(), ": ", &count.to_string()].concat(),
            );
            out.close();
        }
        out.close();
    }
    out.close();
}

fn points(pen: &mut Pen<'_>, ground: &Ground, trees: &[&Placed<'_>], in_order: bool) {
    // The ground that stays dangerous lies under everything.
    for it in trees {
        let stands = matches!(Sign::of(it.reason), Sign::Ring | Sign::Standing);
        if let (true, Some(zone_m)) = (stands, it.zone_m) {
            let (x, y) = ground.at(it.east, it.north);
            pen.circle("s1", x, y, (zone_m + it.off_m) * ground.scale);
        }
    }
    if in_order {
        let mut teams: BTreeMap<u32, Vec<(usize, f64, f64)>> = BTreeMap::new();
        for it in trees {
            if let Some((team, order)) = it.turn {
                let (x, y) = ground.at(it.east, it.north);
                teams.entry(team).or_default().push((order, x, y));
            }
        }
        for way in teams.values_mut() {
            sort_by_key(way, |it| it.0);
            for pair in way.windows(2) {
                pen.line("dash", pair[0].1, pair[0].2, pair[1].1, pair[1].2);
            }
        }
    }
    for it in trees {
        let (x, y) = ground.at(it.east, it.north);
        Sign::of(it.reason).draw(pen, x, y);
    }
    for it in trees {
        let (x, y) = ground.at(it.east, it.north);
        let text = match it.turn {
            Some((_, order)) if in_order && trees.len() > TAGS => order.to_string(),
            _ => it.tag.to_owned(),
        };
        let named = trees.len() <= TAGS || (in_order && trees.len() <= TURNS);
        if named {
            pen.text(x, y - 8.0, 11.0, "halo", Anchor::Middle, &text);
        }
    }
}

/// A grid with the number of trees in each cell.
fn counts(pen: &mut Pen<'_>, ground: &Ground, trees: &[&Placed<'_>]) {
    let side = WIDE / CELLS;
    let mut cells: BTreeMap<(i32, i32), usize> = BTreeMap::new();
    for it in trees {
        let (x, y) = ground.at(it.east, it.north);
        let cell = ((y / side) as i32, (x / side) as i32);
        *cells.entry(cell).or_default() += 1;
    }
    for ((row, column), count) in cells {
        let (x, y) = (f64::from(column) * side, f64::from(row) * side);
        pen.rect("s1 fpan", [x, y, side, side], "");
        let text = count.to_string();
        pen.text(
            x + side / 2.0,
            y + side / 2.0 + 4.0,
            10.0,
            "",
            Anchor::Middle,
            &text,
        );
    }
}

/// The names of the parts, over the middle of their trees.
fn names(pen: &mut Pen<'_>, ground: &Ground, trees: &[&Placed<'_>]) {
    let mut units: BTreeMap<&str, (f64, f64, f64)> = BTreeMap::new();
    for it in trees.iter().filter(|it| !it.unit.is_empty()) {
        let (x, y) = ground.at(it.east, it.north);
        let of = units.entry(it.unit).or_insert((0.0, f64::INFINITY, 0.0));
        *of = (of.0 + x, of.1.min(y), of.2 + 1.0);
    }
    for (name, (x, top, count)) in units {
        let (x, y) = ((x / count).clamp(50.0, WIDE - 50.0), (top - 10.0).max(14.0));
        pen.text(x, y, 12.0, "halo tb", Anchor::Middle, name);
    }
}

/// North, and the scale.
fn frame(pen: &mut Pen<'_>, ground: &Ground, units: Units) {
    pen.shape(
        "s",
        "M##L##M##L##L##",
        &[14.0, 40.0, 14.0, 14.0, 9.0, 20.0, 14.0, 14.0, 19.0, 20.0],
    );
    pen.text(
        22.0,
        24.0,
        12.0,
        "tb halo",
        Anchor::Start,
        &m::PROPERTY_MAP_NORTH,
    );
    let in_m = match units {
        Units::Us => M_PER_FT,
        Units::Metric => 1.0,
    };
    let room = WIDE * 0.4;
    let fits = SCALES
        .iter()
        .rev()
        .find(|it| **it * in_m * ground.scale <= room);
    let length_m = fits.copied().unwrap_or(SCALES[0]) * in_m;
    let (x, y) = (WIDE - 10.0, ground.high + 22.0);
    let wide = length_m * ground.scale;
    pen.shape(
        "s",
        "M##V#M##H#M##V#",
        &[
            x - wide,
            y - 5.0,
            y + 5.0,
            x - wide,
            y,
            x,
            x,
            y - 5.0,
            y + 5.0,
        ],
    );
    let text = length(length_m);
    pen.text(
        x - wide - 6.0,
        y + 4.0,
        12.0,
        "",
        Anchor::End,
        text.first(units),
    );
}

/// The same as a table, some rows at a time.
pub fn places(out: &mut Page<'_>, list: &ReadList, made: &Made, units: Units, from: usize) {
    table_of(out, list, &placed(list, made).0, units, from);
}

fn table_of(out: &mut Page<'_>, list: &ReadList, trees: &[Placed<'_>], units: Units, from: usize) {
    let heads = [
        m::PROPERTY_HEAD_TAG.text(),
        m::PROPERTY_HEAD_EAST.text(),
        m::PROPERTY_HEAD_NORTH.text(),
        m::PROPERTY_HEAD_ZONE.text(),
        m::PROPERTY_HEAD_WHY.text(),
    ];
    let rows = open_rows(out, m::PROPERTY_PLACES, &heads, from, trees.len());
    let metres = |m: f64| {
        let sign = if m <= -0.5 { "−" } else { "" };
        [sign, length(m.abs()).first(units)].concat()
    };
    for it in &trees[rows] {
        out.cell(it.tag);
        out.cell(metres(it.east));
        out.cell(metres(it.north));
        out.cell(list.zones[it.at].map_or(String::new(), metres));
        out.cell(Sign::of(it.reason).word());
    }
    out.close_table();
    turn_buttons(out, PLACES, from, trees.len());
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tree(tag: &'static str, east: f64, north: f64) -> Placed<'static> {
        Placed {
            at: 0,
            tag,
            unit: "",
            east,
            north,
            off_m: 0.0,
            reason: CountedAs::Planned,
            day: None,
            turn: None,
            zone_m: Some(20.0),
        }
    }

    #[test]
    fn north_is_up_east_is_right_and_a_metre_is_as_long_both_ways() {
        let trees = [
            tree("a", 0.0, 0.0),
            tree("b", 100.0, 0.0),
            tree("c", 0.0, 50.0),
        ];
        let ground = Ground::of(&trees.iter().collect::<Vec<_>>());
        let at = |it: &Placed<'_>| ground.at(it.east, it.north);
        let ((ax, ay), (bx, by), (cx, cy)) = (at(&trees[0]), at(&trees[1]), at(&trees[2]));
        assert!(bx > ax && cy < ay, "{ax} {bx} {ay} {cy}");
        assert!((by - ay).abs() < 1e-9 && (cx - ax).abs() < 1e-9);
        assert!(((bx - ax) / 100.0 - (ay - cy) / 50.0).abs() < 1e-9);
        for (x, y) in [at(&trees[0]), at(&trees[1]), at(&trees[2])] {
            assert!((0.0..=WIDE).contains(&x) && (0.0..=ground.high).contains(&y));
        }
    }

    #[test]
    fn one_tree_alone_stands_in_the_middle() {
        let trees = [tree("a", 3.0, -4.0)];
        let ground = Ground::of(&trees.iter().collect::<Vec<_>>());
        let (x, y) = ground.at(3.0, -4.0);
        assert!((x - WIDE / 2.0).abs() < 1e-9 && (y - ground.high / 2.0).abs() < 1e-9);
    }
}
