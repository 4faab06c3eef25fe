//! This spring's own daily temperatures, and the reading of them from a pasted or dropped table.

use super::constants::SeasonConstants;
use super::doy::season_year;
use crate::terms::number::read_number;
use crate::terms::place::Hemisphere;
use crate::terms::small::find::{cut, holds, is_letter};
use crate::terms::small::sort::sort;
use crate::terms::words::words;
use chrono::NaiveDate;
use serde::Serialize;

/// One day's temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Daily {
    /// The day.
    pub date: NaiveDate,
    /// Minimum, °C.
    pub tmin: f64,
    /// Maximum, °C.
    pub tmax: f64,
}

words! {
    /// The scale of the numbers in a table.
    pub enum Scale {
        /// °C.
        Celsius,
        /// °F.
        Fahrenheit,
    }
}

words! {
    /// What is wrong with one line; the line is not used.
    pub enum Trouble {
        /// There are fewer than three cells.
        TooFewCells,
        /// The first date of the line can't be read.
        NoDate,
        /// Minimum or maximum is empty or no number.
        NoNumber,
        /// The minimum is above the maximum.
        MinimumAboveMaximum,
        /// Beyond what air has been measured at ([`SeasonConstants::air_coldest`], [`SeasonConstants::air_hottest`]).
        OutOfRange,
        /// The day was there before, with other values.
        Twice,
    }
}

/// A line that was not used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct BadLine {
    /// Line of the text, from 1.
    pub line: usize,
    /// What is wrong.
    pub trouble: Trouble,
}

words! {
    /// What is doubtful about the table as a whole, to be said before anything is made of it.
    pub enum Doubt {
        /// No line could be used.
        Nothing,
        /// More lines than [`SeasonConstants::spring_most_lines`]; the rest was not read.
        TooLong,
        /// Neither the head nor the person said °C or °F; °C was taken.
        NoScale,
        /// The numbers look like °F and are called °C.
        LooksLikeFahrenheit,
        /// In most lines the first temperature is the higher one: the columns were read the other way round.
        ColumnsSwapped,
        /// `3/4/2027`: day or month first? No line shows it, and none was used.
        DayOrMonthFirst,
        /// Every day lies in another season than the asked one.
        OtherSeason,
        /// Days are missing between the first and the last.
        Gaps,
    }
}

/// What was read.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SpringTable {
    /// The days, in order, each once.
    pub days: Vec<Daily>,
    /// Lines that were not used, in order.
    pub bad: Vec<BadLine>,
    /// Doubts about the whole.
    pub doubts: Vec<Doubt>,
}

/// Reads lines of date, minimum, maximum, parted by comma, semicolon or tab, with or without a head.
///
/// Dates as `2027-04-12`, `20270412`, `2027/4/12`, or with slashes or points and the year last; then the whole table
/// must show whether the day or the month comes first. A head may name the columns in another order (`date`, words
/// with `min` and `max`) and the scale (`F`, `°F`, `fahrenheit`). `scale` is what the person chose and wins.
/// `asked` is the day that the question is about.
#[must_use]
pub fn read(
    text: &str,
    scale: Option<Scale>,
    asked: NaiveDate,
    hemisphere: Hemisphere,
    c: &SeasonConstants,
) -> SpringTable {
    let mut table = SpringTable::default();
    let text = text.trim_start_matches('\u{feff}');
    let mut lines: Vec<(usize, &str)> = text
        .lines()
        .enumerate()
        .map(|(i, l)| (i + 1, l.trim()))
        .filter(|(_, l)| !l.is_empty())
        .collect();
    let most = c.spring_most_lines as usize;
    if lines.len() > most {
        table.doubts.push(Doubt::TooLong);
        lines.truncate(most);
    }
    let mark = delimiter(text);
    let cells = |line: &str| -> Vec<String> {
        line.split(mark)
            .map(|c| c.trim().trim_matches('"').trim().to_owned())
            .collect()
    };
    let (columns, named) = match lines.first().map(|(_, l)| cells(l)) {
        Some(first) if is_head(&first) => {
            lines.remove(0);
            (columns(&first), scale_of_head(&first))
        }
        _ => ([0, 1, 2], None),
    };
    let rows: Vec<(usize, Vec<String>)> = lines.iter().map(|(n, l)| (*n, cells(l))).collect();
    let order = day_order(
        rows.iter()
            .filter_map(|(_, c)| c.get(columns[0]))
            .map(String::as_str),
    );
    let mut read: Vec<(usize, Daily)> = Vec::new();
    let mut told = None;
    for (line, cells) in &rows {
        let mut bad = |trouble| {
            table.bad.push(BadLine {
                line: *line,
                trouble,
            })
        };
        let [Some(date), Some(low), Some(high)] = columns.map(|i| cells.get(i)) else {
            bad(Trouble::TooFewCells);
            continue;
        };
        let Some(date) = day(date, order) else {
            bad(Trouble::NoDate);
            continue;
        };
        let (Some((low, a)), Some((high, b))) = (temperature(low), temperature(high)) else {
            bad(Trouble::NoNumber);
            continue;
        };
        told = told.or(a).or(b);
        read.push((
            *line,
            Daily {
                date,
                tmin: low,
                tmax: high,
            },
        ));
    }
    if order == Order::Unknown {
        table.doubts.push(Doubt::DayOrMonthFirst);
    }
    let swapped = read.iter().filter(|(_, d)| d.tmin > d.tmax).count() * 2 > read.len();
    if swapped {
        table.doubts.push(Doubt::ColumnsSwapped);
    }
    let said = scale.or(told).or(named);
    if said.is_none() && !read.is_empty() {
        table.doubts.push(Doubt::NoScale);
    }
    let celsius = said != Some(Scale::Fahrenheit);
    let highest = read.iter().map(|(_, d)| d.tmin.max(d.tmax));
    let mean_high = highest.clone().sum::<f64>() / read.len().max(1) as f64;
    if celsius && (mean_high > c.spring_hot || highest.filter(|t| *t > c.air_hottest).count() > 2) {
        table.doubts.push(Doubt::LooksLikeFahrenheit);
    }
    for (line, d) in read {
        let to_celsius = |t: f64| if celsius { t } else { (t - 32.0) / 1.8 };
        let (low, high) = if swapped {
            (d.tmax, d.tmin)
        } else {
            (d.tmin, d.tmax)
        };
        keep(
            &mut table,
            line,
            Daily {
                date: d.date,
                tmin: to_celsius(low),
                tmax: to_celsius(high),
            },
            c,
        );
    }
    sort(&mut table.bad, |a, b| a.line < b.line);
    finish(&mut table, asked, hemisphere);
    table
}

/// Puts a day in its place, or its line among the bad ones.
fn keep(table: &mut SpringTable, line: usize, d: Daily, c: &SeasonConstants) {
    let trouble = if d.tmin > d.tmax {
        Trouble::MinimumAboveMaximum
    } else if d.tmin < c.air_coldest || d.tmax > c.air_hottest {
        Trouble::OutOfRange
    } else {
        match table.days.binary_search_by_key(&d.date, |k| k.date) {
            Err(at) => return table.days.insert(at, d),
            Ok(at) if table.days[at] == d => return,
            Ok(_) => Trouble::Twice,
        }
    };
    table.bad.push(BadLine { line, trouble });
}

fn finish(table: &mut SpringTable, asked: NaiveDate, hemisphere: Hemisphere) {
    let (Some(first), Some(last)) = (table.days.first(), table.days.last()) else {
        table.doubts.push(Doubt::Nothing);
        return;
    };
    if (last.date - first.date).num_days() + 1 > table.days.len() as i64 {
        table.doubts.push(Doubt::Gaps);
    }
    let season = season_year(asked, hemisphere);
    if table
        .days
        .iter()
        .all(|d| season_year(d.date, hemisphere) != season)
    {
        table.doubts.push(Doubt::OtherSeason);
    }
}

/// Tab before semicolon before comma: a decimal comma is only possible beside the first two.
fn delimiter(text: &str) -> char {
    ['\t', ';']
        .into_iter()
        .find(|m| text.chars().any(|c| c == *m))
        .unwrap_or(',')
}

/// A head has letters in its first cell, which is no date, and in one more.
fn is_head(cells: &[String]) -> bool {
    let letters = |c: &String| c.chars().any(is_letter);
    let front = cells
        .first()
        .is_some_and(|c| letters(c) && parts(c).is_none());
    front && cells.iter().filter(|c| letters(c)).count() >= 2
}

/// Where date, minimum and maximum stand by a head; where it does not tell, the first three in this order.
fn columns(head: &[String]) -> [usize; 3] {
    let find = |word: &str| {
        head.iter()
            .position(|c| holds(&c.to_ascii_lowercase(), word))
    };
    match (find("min"), find("max")) {
        (Some(low), Some(high)) if low != high => {
            let first = (0..head.len())
                .find(|i| *i != low && *i != high)
                .unwrap_or(0);
            [find("date").unwrap_or(first), low, high]
        }
        _ => [0, 1, 2],
    }
}

fn scale_of_head(head: &[String]) -> Option<Scale> {
    head.iter().find_map(|cell| {
        let cell = cell.to_ascii_lowercase();
        cell.split(|c: char| !is_letter(c))
            .find_map(|word| match word {
                "f" | "degf" | "fahrenheit" => Some(Scale::Fahrenheit),
                "c" | "degc" | "celsius" => Some(Scale::Celsius),
                _ => None,
            })
    })
}

/// A temperature, and the scale behind it where one stands there.
fn temperature(cell: &str) -> Option<(f64, Option<Scale>)> {
    let (number, scale) = match cell.chars().next_back() {
        Some('C' | 'c') => (cut(cell, cell.len() - 1).0, Some(Scale::Celsius)),
        Some('F' | 'f') => (cut(cell, cell.len() - 1).0, Some(Scale::Fahrenheit)),
        _ => (cell, None),
    };
    let number = read_number(number.trim_end().trim_end_matches('°')).ok()?;
    number.unit.is_none().then_some((number.value, scale))
}

/// In which order a date with the year last is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Order {
    /// There is none such, or day first.
    DayFirst,
    /// Month first.
    MonthFirst,
    /// No line shows it.
    Unknown,
}

/// Three numbers of a date, as written.
fn parts(text: &str) -> Option<[u32; 3]> {
    let text = text.split(['T', ' ']).next().unwrap_or("");
    let digits = |t: &str| -> Option<u32> {
        let fits = (1..=4).contains(&t.len()) && t.bytes().all(|b| b.is_ascii_digit());
        fits.then(|| t.bytes().fold(0, |n, b| n * 10 + u32::from(b - b'0')))
    };
    if text.len() == 8 && text.bytes().all(|b| b.is_ascii_digit()) {
        let (year, rest) = cut(text, 4);
        let (month, day) = cut(rest, 2);
        return Some([digits(year)?, digits(month)?, digits(day)?]);
    }
    let mut three = text.split(['-', '/', '.']).map(digits);
    let found = [three.next()??, three.next()??, three.next()??];
    three.next().is_none().then_some(found)
}

fn day_order<'a>(dates: impl Iterator<Item = &'a str>) -> Order {
    let (mut any, mut first, mut second) = (false, false, false);
    for [a, b, _] in dates.filter_map(parts).filter(|p| p[0] <= 31) {
        any = true;
        first |= a > 12;
        second |= b > 12;
    }
    match (any, first, second) {
        (true, true, true) | (true, false, false) => Order::Unknown,
        (true, false, true) => Order::MonthFirst,
        _ => Order::DayFirst,
    }
}

fn day(text: &str, order: Order) -> Option<NaiveDate> {
    let [a, b, c] = parts(text)?;
    let (y, m, d) = match order {
        _ if a > 31 => (a, b, c),
        Order::DayFirst => (c, b, a),
        Order::MonthFirst => (c, a, b),
        Order::Unknown => return None,
    };
    NaiveDate::from_ymd_opt(if y > 999 { y as i32 } else { return None }, m, d)
}
