//! Writes every drawing in many cases to standard output as one page, to be looked at.
//! `cargo run -p calc-view --example gallery -- dark > page.html` (light, dark or sun).

use calc_view::answer::reach::drawing::{DrawnTarget, ReachFigure, ReachLabels, reach};
use calc_view::answer::ring::drawing::{CutLabels, Trunk, TrunkLabels, cut, trunk};
use calc_view::answer::season::drawing::{
    DaySpan, Pin, VisitYear, VisitsLabels, YearLabels, YearTape, visits, year, year_small,
};
use calc_view::draw::glyph::{Glyph, glyph};
use calc_view::draw::mark::{Swatch, brand, defs, sun, swatch};
use calc_view::draw::range::{RangeBar, RangeLabels, ShareBar, SharesLabels, range, shares};
use calc_view::draw::tree::{Habit, stand};
use calc_view::draw::{RangeGrade, ruler};
use calc_view::out::{Html, Out};
use calc_view::page::Page;

/// The sheets of a page, joined.
fn sheets() -> String {
    let names: [&str; 9] = include!("../../../www/style/sheets.rs");
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../www/style");
    let read = |path: &str| std::fs::read_to_string(format!("{folder}/{path}")).expect(path);
    let calculators = names
        .map(|name| read(&format!("parts/{name}.css")))
        .concat();
    [read("tokens.css"), calculators, read("page.css")].concat()
}

fn figure(out: &mut Page<'_>, what: &str, draw: impl FnOnce(&mut dyn Out)) {
    out.open_class("section", "part");
    out.leaf("h3", what);
    out.open("figure");
    draw(out.sink());
    out.close();
    out.close();
}

fn trunks(out: &mut Page<'_>) {
    out.open_class("div", "plates");
    for (inches, bark, least, better) in [
        (2.0, 2.0, 150.0, 150.0),
        (9.0, 5.0, 200.0, 229.0),
        (14.5, 10.0, 150.0, 368.0),
        (22.0, 30.0, 200.0, 500.0),
        (30.0, 7.0, 254.0, 500.0),
        (60.0, 40.0, 254.0, 500.0),
    ] {
        let t = Trunk {
            dbh_mm: inches * 25.4,
            bark_mm: bark,
            at_least_mm: least,
            better_mm: better,
        };
        let name = format!("{inches} in across");
        let inch = |mm: f64| format!("{:.0} in", mm / 25.4);
        let l = TrunkLabels {
            aria: "Trunk to scale",
            bare: "bare",
            across: &name,
            at_least: [&inch(least), "at least"],
            better: [&inch(better), &format!("{:.0} cm", better / 10.0)],
            up: ["4½ ft up", "3 ft up"],
            person: "5 ft 7 in",
        };
        figure(out, &name, |out| trunk(out, &t, &l));
    }
    let l = CutLabels {
        aria: "The cut",
        bark: "bark",
        bark_size: "bark 0.4 in",
        bare: "scraped bare",
        wood: "wood: no cut here",
    };
    figure(out, "the cut", |out| cut(out, &l));
    out.close();
}

fn reaches(out: &mut Page<'_>) {
    let t = |distance_m: f64, inside: bool, label: &str| DrawnTarget {
        distance_m,
        inside,
        label: label.into(),
    };
    let one = [t(30.48, false, "path, 100 ft")];
    let inside = [t(12.2, true, "a person on the path, 40 ft")];
    let four = [
        t(30.0, false, "path, 98 ft"),
        t(33.0, false, "fence, 108 ft"),
        t(52.0, false, "building, 171 ft"),
        t(90.0, false, "road, 295 ft"),
    ];
    let eight = [
        t(0.6, true, "tree to keep, 2 ft"),
        t(5.0, true, "fence, 16 ft"),
        t(5.5, true, "building, 18 ft"),
        t(9.0, true, "line, 30 ft"),
        t(12.0, true, "path, 39 ft"),
        t(14.0, false, "road, 46 ft"),
        t(18.0, false, "neighbour's tree, 59 ft"),
        t(400.0, false, "building, 1312 ft"),
    ];
    for (name, used, estimate, zone, people, targets, habit) in [
        (
            "one, outside",
            18.3,
            15.8,
            27.4,
            Some(36.6),
            &one[..],
            Habit::Hardwood,
        ),
        ("stop", 22.6, 19.5, 33.8, None, &inside[..], Habit::Hardwood),
        (
            "none",
            18.3,
            18.3,
            27.4,
            Some(36.6),
            &[][..],
            Habit::Conifer,
        ),
        (
            "four, downhill",
            20.0,
            17.0,
            40.0,
            Some(40.0),
            &four[..],
            Habit::Conifer,
        ),
        (
            "eight on a small tree",
            6.0,
            5.0,
            9.0,
            Some(12.0),
            &eight[..],
            Habit::Hardwood,
        ),
        (
            "tall, far",
            45.0,
            40.0,
            67.5,
            Some(90.0),
            &four[..],
            Habit::Conifer,
        ),
        (
            "one beyond the torn end",
            8.0,
            7.0,
            12.0,
            Some(16.0),
            &four[3..],
            Habit::Hardwood,
        ),
    ] {
        let r = ReachFigure {
            height_used_m: used,
            height_estimate_m: estimate,
            zone_m: zone,
            people_out_m: people,
            targets,
            habit,
        };
        let height = format!("{:.0} ft ({used:.0} m), the height used", used / 0.3048);
        let short = format!("{:.0} ft used", used / 0.3048);
        let l = ReachLabels {
            aria: "Reach, to scale",
            height: &height,
            height_short: &short,
            foot: "ft",
            metre: "m",
            can_land: "can land here",
            can_throw: "can throw wood",
            people_out: "keep people out",
            heights: [
                "1 height",
                if zone > used * 1.9 {
                    "2 heights"
                } else {
                    "1½ heights"
                },
                "2 heights",
            ],
        };
        figure(out, name, |out| reach(out, &r, &l));
    }
}

fn years(out: &mut Page<'_>) {
    let s = |from, to| DaySpan { from, to };
    let p = |day, number| Pin { day, number };
    let north = YearTape {
        slips: &[s(140, 185)],
        may_slip: &[s(128, 139), s(186, 203)],
        closed: &[s(91, 151)],
        caution: &[],
        window: &[s(152, 185)],
        today: Some(163),
        asked: Some(163),
        visits: &[p(191, 1), p(268, 2)],
    };
    let south = YearTape {
        slips: &[s(305, 20)],
        may_slip: &[s(288, 304), s(21, 45)],
        closed: &[],
        caution: &[s(244, 31)],
        window: &[s(305, 20)],
        today: Some(150),
        asked: Some(10),
        visits: &[p(30, 1), p(38, 2), p(41, 3), p(300, 4)],
    };
    let winter = YearTape {
        slips: &[s(120, 190)],
        may_slip: &[s(100, 119), s(191, 220)],
        closed: &[s(91, 212)],
        caution: &[s(91, 243)],
        window: &[],
        today: Some(340),
        asked: Some(355),
        visits: &[],
    };
    for (name, y, asked, window) in [
        ("north", &north, "12 June", "your window: 1 June to 4 July"),
        (
            "south, wrapping",
            &south,
            "10 January",
            "your window: 1 November to 20 January",
        ),
        ("oak, no window", &winter, "21 December", ""),
    ] {
        let l = YearLabels {
            aria: "Year tape",
            months: [
                "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
            ],
            initials: ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"],
            bark: "Bark",
            rules: "Rules",
            asked,
            today: "today",
            window,
            window_short: if window.is_empty() { "" } else { "window" },
        };
        figure(out, name, |out| year(out, y, &l));
        out.open_class("div", "tapefig");
        figure(out, "small", |out| year_small(out, y, &l));
        out.close();
    }
    let rows = [
        VisitYear {
            label: "2026".into(),
            ring: Some(163),
            visits: vec![p(191, 1), p(268, 2)],
        },
        VisitYear {
            label: "2027".into(),
            ring: None,
            visits: vec![p(145, 3), p(196, 4), p(253, 5)],
        },
        VisitYear {
            label: "2028".into(),
            ring: None,
            visits: vec![p(145, 6), p(196, 7), p(200, 8)],
        },
    ];
    let l = VisitsLabels {
        aria: "Three years of visits",
        ring: "ring",
    };
    figure(out, "visits", |out| visits(out, &rows, &l));
}

fn ranges(out: &mut Page<'_>) {
    for (name, low, likely, high, grade, text, unit) in [
        (
            "minutes",
            10.0,
            Some(20.0),
            40.0,
            RangeGrade::Estimated,
            "20 min",
            "min",
        ),
        (
            "minutes, long",
            75.0,
            Some(160.0),
            420.0,
            RangeGrade::Assumed,
            "160 min",
            "min",
        ),
        (
            "years",
            3.5,
            Some(7.0),
            13.0,
            RangeGrade::Measured,
            "7 years",
            "years",
        ),
        (
            "no typical",
            2.0,
            None,
            6.0,
            RangeGrade::Estimated,
            "2 to 6",
            "min",
        ),
    ] {
        let r = RangeBar {
            low,
            likely,
            high,
            grade,
        };
        let l = RangeLabels {
            aria: "Range",
            likely: text,
            unit,
        };
        figure(out, name, |out| range(out, &r, &l));
    }
    let s = |low, likely, high, grade, label: &str| ShareBar {
        low,
        likely,
        high,
        grade,
        label: label.into(),
    };
    let rows = [
        s(
            5.0,
            Some(20.0),
            40.0,
            RangeGrade::Estimated,
            "end of season 1: 5 to 40 in 100",
        ),
        s(
            40.0,
            Some(60.0),
            80.0,
            RangeGrade::Assumed,
            "end of season 2: 40 to 80 in 100",
        ),
        s(
            70.0,
            None,
            95.0,
            RangeGrade::Measured,
            "end of season 3: 70 to 95 in 100",
        ),
    ];
    let l = SharesLabels {
        aria: "Shares",
        unit: "in 100",
    };
    figure(out, "shares", |out| shares(out, &rows, &l));
}

fn main() {
    let theme = std::env::args().nth(1).unwrap_or_else(|| "light".into());
    let mut main = Html::default();
    let out = &mut Page::new(&mut main);
    out.open_class("div", "wrap top");
    stand(out.sink());
    out.leaf("h1", "One tree, one answer");
    out.leaf_class("p", "lede", "Every drawing in many cases, invented values.");
    out.close();
    out.open("main");
    out.open_class("div", "wrap");
    out.open_class("div", "sb");
    out.open_class("ul", "tagrow");
    for sign in [
        Glyph::Do,
        Glyph::Wait,
        Glyph::OtherWay,
        Glyph::Stop,
        Glyph::CantTell,
        Glyph::Caution,
        Glyph::Print,
        Glyph::Share,
        Glyph::Calendar,
        Glyph::Call,
        Glyph::Next,
    ] {
        out.open("li");
        glyph(out.sink(), sign);
        out.close();
    }
    out.close();
    out.open_class("ul", "key");
    for kind in [
        Swatch::Solid,
        Swatch::Ink,
        Swatch::Half,
        Swatch::Hatch,
        Swatch::Wide,
        Swatch::Empty,
        Swatch::Dash,
        Swatch::Cross,
        Swatch::Dots,
        Swatch::Pin,
        Swatch::Notch,
        Swatch::Ring,
        Swatch::Octagon,
    ] {
        out.open("li");
        swatch(out.sink(), kind);
        out.leaf("span", format!("{kind:?}"));
        out.close();
    }
    out.close();
    trunks(out);
    reaches(out);
    years(out);
    ranges(out);
    ruler::foot(out.sink(), 183, "in", "cm");
    for _ in 0..3 {
        out.close();
    }
    let mut top = Html::default();
    let head = &mut Page::new(&mut top);
    defs(head.sink());
    head.open_class("header", "head");
    head.open_class("div", "wrap");
    head.open_class("span", "brand");
    brand(head.sink());
    head.text("Slipbark");
    head.close();
    head.open_class("button", "sunsw");
    sun(head.sink());
    head.text("Sun");
    head.close();
    head.close();
    ruler::head(head.sink());
    head.close();
    println!(
        "<!doctype html><html lang=en data-theme={theme}><meta charset=utf-8><meta name=viewport content=\"width=device-width\"><title>Drawings</title><style>{}</style><body>{}{}</body></html>",
        sheets(),
        top.into_string(),
        main.into_string()
    );
}
