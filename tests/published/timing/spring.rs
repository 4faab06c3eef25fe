//! Reading of this spring's temperatures: what is wrong is named by line, what is doubtful is said before it is used.
//! The tables here are made up; the degree-days themselves are checked in degree_days.rs.

use crate::support::{constants, day};
use calc::terms::place::Hemisphere;
use calc::timing::spring::{Doubt, Scale, SpringTable, Trouble, read};

fn table(text: &str) -> SpringTable {
    read(
        text,
        None,
        day(2027, 5, 20),
        Hemisphere::North,
        &constants(),
    )
}

fn bad(t: &SpringTable) -> Vec<(usize, Trouble)> {
    t.bad.iter().map(|b| (b.line, b.trouble)).collect()
}

/// Lines for the first days of March and April 2027, by a date's form.
fn lines(date: impl Fn(u32, u32) -> String, low: f64, high: f64, mark: char) -> String {
    (1..=60)
        .map(|n| {
            format!(
                "{}{mark}{low}{mark}{high}\n",
                date(if n > 31 { 4 } else { 3 }, if n > 31 { n - 31 } else { n })
            )
        })
        .collect()
}

#[test]
fn a_plain_table_in_celsius_is_read_whole() {
    let t = table(&format!(
        "date,tmin C,tmax C\n{}",
        lines(|m, d| format!("2027-{m:02}-{d:02}"), -1.5, 8.25, ',')
    ));
    assert_eq!(
        (t.days.len(), t.bad.len(), t.doubts.len()),
        (60, 0, 0),
        "{:?} {:?}",
        t.bad,
        t.doubts
    );
    assert_eq!(
        (t.days[0].date, t.days[0].tmin, t.days[0].tmax),
        (day(2027, 3, 1), -1.5, 8.25)
    );
}

#[test]
fn fahrenheit_is_taken_from_the_head_from_the_cells_or_from_the_choice() {
    let head = table("day;Max (°F);Min (°F)\n2027-03-01;50;32\n");
    let cells = table("2027-03-01\t32 °F\t50F\n");
    let chosen = read(
        "20270301,32,50",
        Some(Scale::Fahrenheit),
        day(2027, 5, 20),
        Hemisphere::North,
        &constants(),
    );
    for t in [head, cells, chosen] {
        assert_eq!(t.days.len(), 1, "{t:?}");
        assert!(
            (t.days[0].tmin - 0.0).abs() < 1e-12 && (t.days[0].tmax - 10.0).abs() < 1e-12,
            "{t:?}"
        );
        assert!(t.doubts.is_empty(), "{:?}", t.doubts);
    }
}

#[test]
fn fahrenheit_called_celsius_is_doubted() {
    let t = table(&format!(
        "date,min_c,max_c\n{}",
        lines(|m, d| format!("2027-{m:02}-{d:02}"), 35.0, 54.0, ',')
    ));
    assert_eq!(t.doubts, [Doubt::LooksLikeFahrenheit]);
    let hot = table("date,min c,max c\n2027-03-01,60,70\n2027-03-02,1,9\n");
    assert_eq!(bad(&hot), [(2, Trouble::OutOfRange)]);
}

#[test]
fn swapped_columns_are_read_the_other_way_round_and_said() {
    let t = table(&format!(
        "date,tmin c,tmax c\n{}",
        lines(|m, d| format!("2027-{m:02}-{d:02}"), 9.0, -2.0, ',')
    ));
    assert_eq!(t.doubts, [Doubt::ColumnsSwapped]);
    assert!(t.days.iter().all(|d| (d.tmin, d.tmax) == (-2.0, 9.0)));
}

#[test]
fn each_bad_line_is_named_and_the_others_are_used() {
    let t = table(
        "date,min c,max c\n2027-03-01,1,9\n2027-02-30,1,9\nyesterday,1,9\n2027-03-02,1\n2027-03-03,,9\n\n2027-03-04,NA,9\n2027-03-05,10,2\n2027-03-06,2,80\n2027-03-01,1,8\n2027-03-01,1,9\n2027-03-07,0,7\n",
    );
    assert_eq!(
        bad(&t),
        [
            (3, Trouble::NoDate),
            (4, Trouble::NoDate),
            (5, Trouble::TooFewCells),
            (6, Trouble::NoNumber),
            (8, Trouble::NoNumber),
            (9, Trouble::MinimumAboveMaximum),
            (10, Trouble::OutOfRange),
            (11, Trouble::Twice),
        ]
    );
    assert_eq!(t.days.len(), 2);
    assert_eq!(t.doubts, [Doubt::Gaps]);
}

#[test]
fn a_date_with_the_year_last_is_read_where_the_table_shows_its_order_and_refused_where_it_does_not()
{
    for t in [
        table(&lines(|m, d| format!("{m}/{d}/2027"), 1.0, 9.0, ',')),
        table(&lines(|m, d| format!("{d}.{m}.2027"), 1.0, 9.0, ';')),
    ] {
        assert_eq!(
            (t.days.len(), t.days[59].date),
            (60, day(2027, 4, 29)),
            "{:?}",
            t.doubts
        );
    }
    let t = table("3/4/2027,1,9\n4/4/2027,1,9\n");
    assert_eq!(
        (t.days.len(), t.doubts),
        (0, vec![Doubt::DayOrMonthFirst, Doubt::Nothing])
    );
}

#[test]
fn decimal_commas_are_read_beside_semicolons_and_a_byte_order_mark_is_ignored() {
    let t = table("\u{feff}2027-03-01,1 C,9 C");
    assert_eq!(t.days.len(), 1, "a byte order mark is no part of the date");
    let t = table("Datum;Tmin °C;Tmax °C\n2027-03-01;-1,5;8,25\n");
    assert_eq!((t.days[0].tmin, t.days[0].tmax), (-1.5, 8.25));
}

#[test]
fn a_thousand_rows_of_another_year_are_doubted() {
    let other: String = day(2021, 1, 1)
        .iter_days()
        .take(1000)
        .map(|d| format!("{d},1 C,9 C\n"))
        .collect();
    let t = table(&other);
    assert_eq!((t.days.len(), t.doubts), (1000, vec![Doubt::OtherSeason]));
    let long: String = day(2021, 1, 1)
        .iter_days()
        .take(2400)
        .map(|d| format!("{d},1 C,9 C\n"))
        .collect();
    assert!(table(&long).doubts.contains(&Doubt::TooLong));
}

#[test]
fn in_the_south_a_spring_runs_over_the_new_year() {
    let rows: String = day(2027, 9, 1)
        .iter_days()
        .take(60)
        .map(|d| format!("{d},1 C,9 C\n"))
        .collect();
    assert!(
        read(
            &rows,
            None,
            day(2028, 1, 10),
            Hemisphere::South,
            &constants()
        )
        .doubts
        .is_empty()
    );
    assert_eq!(
        read(
            &rows,
            None,
            day(2027, 5, 10),
            Hemisphere::South,
            &constants()
        )
        .doubts,
        [Doubt::OtherSeason]
    );
}

#[test]
fn any_text_is_answered() {
    for text in [
        "",
        "\n\n",
        ",,,",
        "°,°,°",
        "date",
        "2027-03-01",
        "é;é;é\n;;",
        "99999999,1,2",
        "2027-03-01,1e5,2\n",
        "\u{feff}date,min,max\n",
    ] {
        let t = table(text);
        assert!(
            t.days.is_empty() && t.doubts.contains(&Doubt::Nothing),
            "{text:?}: {t:?}"
        );
    }
}
