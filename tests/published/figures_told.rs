//! The figures on the page of how answers are made, worked out again from the tables that they come from: what the page says of a
//! check must be what the check finds. Other figures there are held by the checks of their own files, which state them.

use crate::support::*;

/// The page in each language.
fn pages() -> [String; 2] {
    ["en", "es"].map(|language| {
        let path = root()
            .join("content/pages")
            .join(language)
            .join("method.md");
        std::fs::read_to_string(path).expect("the page")
    })
}

/// A row of its table of checks holds all of these.
fn told(parts: &[String]) {
    for page in pages() {
        let row = page
            .lines()
            .find(|line| line.starts_with('|') && parts.iter().all(|part| line.contains(part)));
        assert!(row.is_some(), "no row tells {parts:?}");
    }
}

#[test]
fn heights_are_told_as_they_were_counted() {
    let rows = rows("content/evidence/height_percentiles.csv");
    let counted = |row: &Row, column: &str| match row[column].is_empty() {
        true => None,
        false => Some((number(row, column), number(row, "n_of_our_species"))),
    };
    let mean = |column: &str| {
        let all: Vec<_> = rows.iter().filter_map(|row| counted(row, column)).collect();
        let trees: f64 = all.iter().map(|(_, n)| n).sum();
        (
            all.iter().map(|(share, n)| share * n).sum::<f64>() / trees,
            trees,
        )
    };
    let (over, trees) = mean("percent_over_hazard");
    let (inside, _) = mean("percent_in_shown_range");
    println!("{trees} trees, {over:.2} above, {inside:.1} inside");
    let thousands = format!("{},{:03}", trees as u32 / 1000, trees as u32 % 1000);
    told(&[thousands, format!("{over:.1}")]);
    assert!((78.0..=82.0).contains(&inside), "{inside}");
    told(&["78".to_owned(), "82".to_owned()]);
}

#[test]
fn bark_is_told_as_it_stands_beside_the_fitted_lines() {
    let ratios: Vec<f64> = rows("content/evidence/bark.csv")
        .iter()
        .filter(|row| !row["sbt_12in_fofem"].is_empty() && !row["sbt_12in_clark"].is_empty())
        .map(|row| number(row, "sbt_12in_fofem") / number(row, "sbt_12in_clark"))
        .collect();
    let low = ratios.iter().copied().fold(f64::INFINITY, f64::min);
    let high = ratios.iter().copied().fold(0.0, f64::max);
    let mean = ratios.iter().sum::<f64>() / ratios.len() as f64;
    let two = |value: f64| format!("{value:.2}");
    told(&[ratios.len().to_string(), two(low), two(high), two(mean)]);
}

#[test]
fn the_year_of_conifers_is_told_as_it_was_measured() {
    let rows = rows("content/evidence/conifer_growth.csv");
    let mut places: Vec<&str> = rows.iter().map(|row| row["place"].as_str()).collect();
    places.sort_unstable();
    places.dedup();
    let ends = |column: &str| {
        let days = rows.iter().map(|row| number(row, column));
        let low = days.clone().fold(f64::INFINITY, f64::min);
        let high = days.fold(0.0, f64::max);
        [low, high].map(|day| format!("{day:.0}"))
    };
    let mut parts = vec![rows.len().to_string(), places.len().to_string()];
    parts.extend(ends("day_75"));
    parts.extend(ends("day_90"));
    told(&parts);
}

#[test]
fn snags_are_told_as_the_curve_and_the_counts_have_them() {
    let standing =
        |half_life: f64, years: f64| 100.0 * (-(years / (half_life / 0.7543)).powf(1.3)).exp();
    let shown = |value: f64| format!("{value:.0}");
    let class = [5.0, 10.0, 15.0].map(|years| shown(standing(8.0, years)));
    told(&[class.join(", "), "136".to_owned()]);
    let after_a_ring = [7.0, 5.0].map(|years| shown(standing(8.0, years)));
    told(&[
        after_a_ring[0].clone(),
        after_a_ring[1].clone(),
        "71.5".to_owned(),
    ]);
    let seen: f64 = rows("content/evidence/snag_remeasured.csv")
        .iter()
        .filter(|row| ["red maple", "red oak group", "white oak"].contains(&row["group"].as_str()))
        .map(|row| number(row, "n"))
        .sum();
    told(&[
        shown(seen),
        "4.5".to_owned(),
        "6.6".to_owned(),
        "9.0".to_owned(),
    ]);
    // What dies in the middle of five years on the mean falls in them as often as the curve says.
    let falls = |half_life: f64| {
        let steps = 100;
        let stands: f64 = (0..steps)
            .map(|at| standing(half_life, 5.0 * (f64::from(at) + 0.5) / f64::from(steps)))
            .sum::<f64>()
            / f64::from(steps);
        100.0 - stands
    };
    told(&["B05".to_owned(), shown(falls(16.0)), shown(falls(3.0))]);
}
