//! The table of sources: one that code cites and the table lacks, or a label of two, stops the build.

use super::copy::Copy;

const SOURCES: &str = "evidence/sources";

#[test]
fn a_source_that_code_cites_stops_the_build_where_it_is_not_listed_or_allows_less() {
    let copy = Copy::new("code-cites-stranger");
    copy.without(SOURCES, "S35,");
    copy.stops_at_the_end(SOURCES, "the code cites S35, which has no line");
    let copy = Copy::new("code-cites-weak");
    copy.replace(SOURCES, "S35,", "PUBLISHED", "SECONDARY");
    copy.stops_at(SOURCES, "S35,", &["the code cites S35 as Published"]);
}

/// An answer names each source once, by its label.
#[test]
fn two_sources_of_one_label_stop_the_build() {
    let copy = Copy::new("label-twice");
    copy.replace(SOURCES, "S35,", "Neely 1979", "Rogala 2016");
    let problem = copy.problem();
    let says = "label: another source has \"Rogala 2016\" too";
    assert!(problem.contains(says), "{problem}");
}
