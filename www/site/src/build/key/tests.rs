//! Every way through the key is walked, with every answer that it offers.

use super::page::{Key, OnePage, first, one};
use super::steps::{CANT_TELL, Step};
use super::table::Tree;
use crate::build::languages;
use crate::build::packed::expect_light;
use crate::project;
use anyhow::Result;
use std::collections::BTreeSet;

fn key() -> Result<Key> {
    Key::read(&project::root()?)
}

/// Every page of the key in the language in use, under its folder.
fn pages(key: &Key) -> Result<Vec<(String, String)>> {
    let mut pages = vec![("key/".to_owned(), first(key, "/")?)];
    for page in &key.pages {
        pages.push((page.folder(), one(key, page, "/")?));
    }
    Ok(pages)
}

/// Whether a page is for leaves that stand as a tree's do and are of its kind.
fn is_for(page: &OnePage, tree: &Tree) -> bool {
    let folder = page.folder();
    tree.words("arrangement").any(|stand| {
        let mut kinds = tree.words("kind");
        kinds.any(|kind| folder == format!("key/{stand}-{kind}/"))
    })
}

/// An answer on a way: the column it asks for, its question and answer among the known.
type Answered = (usize, usize);

/// Calls `end` for every way to an end, with the answers on it and how often nothing could be told.
fn ways(
    page: &OnePage,
    at: usize,
    way: &mut Vec<Answered>,
    cant: u8,
    end: &mut impl FnMut(&[Answered], u8, &[usize], bool),
) {
    match &page.steps[at] {
        Step::End { left, named } => end(way, cant, left, *named),
        Step::Ask {
            question,
            answers,
            cant_tell,
            ..
        } => {
            assert!(
                way.iter().all(|(asked, _)| asked != question),
                "asked again"
            );
            assert_eq!(cant_tell.is_none(), cant + 1 == CANT_TELL, "at step {at}");
            for (answer, next) in answers {
                way.push((*question, *answer));
                ways(page, *next, way, cant, end);
                way.pop();
            }
            if let Some(next) = cant_tell {
                ways(page, *next, way, cant + 1, end);
            }
        }
    }
}

#[test]
fn every_tree_with_marks_is_reached_and_none_against_its_marks() -> Result<()> {
    let key = key()?;
    let known = key.known();
    let mut reached = BTreeSet::new();
    let mut named = BTreeSet::new();
    let (mut steps, mut count) = (0, 0);
    for page in &key.pages {
        steps += page.steps.len();
        ways(
            page,
            0,
            &mut Vec::new(),
            0,
            &mut |way, cant, left, is_named| {
                count += 1;
                assert!(cant < CANT_TELL);
                assert!(!left.is_empty(), "{}: an end without a tree", page.folder());
                for at in left {
                    let tree = &known.trees[*at];
                    reached.insert(*at);
                    for (question, answer) in way {
                        let question = &known.questions[*question];
                        let stays = question.stays(tree, &question.answers[*answer]);
                        assert!(
                            stays,
                            "{} is shown against {}",
                            tree.scientific, question.id
                        );
                    }
                }
                if is_named {
                    let tree = &known.trees[left[0]];
                    assert!(tree.listed && left.len() == 1, "{}", tree.scientific);
                    assert!(tree.was_read("arrangement") && tree.was_read("kind"));
                    named.insert(left[0]);
                }
            },
        );
    }
    let missing: Vec<&str> = (0..known.trees.len())
        .filter(|at| !reached.contains(at))
        .map(|at| known.trees[at].scientific.as_str())
        .collect();
    assert!(missing.is_empty(), "never reached: {missing:?}");
    println!(
        "{} pages, {steps} steps, {count} ways, {} trees, {} of them named",
        key.pages.len(),
        known.trees.len(),
        named.len()
    );
    assert!(named.len() > 20, "{} are named", named.len());
    Ok(())
}

#[test]
fn a_tree_goes_all_ways_that_its_own_marks_allow_and_stays_to_the_end() -> Result<()> {
    /// Walks the answers that stand for a tree; it must be left at the end.
    fn follow(key: &Key, page: &OnePage, tree: usize, at: usize, seen: &mut BTreeSet<usize>) {
        if !seen.insert(at) {
            return;
        }
        let known = key.known();
        match &page.steps[at] {
            Step::End { left, .. } => {
                let name = &known.trees[tree].scientific;
                assert!(left.contains(&tree), "{}: {name} is lost", page.folder());
            }
            Step::Ask {
                question, answers, ..
            } => {
                let question = &known.questions[*question];
                for (answer, next) in answers {
                    if question.has(&known.trees[tree], &question.answers[*answer]) {
                        follow(key, page, tree, *next, seen);
                    }
                }
            }
        }
    }
    let key = key()?;
    for page in &key.pages {
        for tree in 0..key.known().trees.len() {
            if is_for(page, &key.known().trees[tree]) {
                follow(&key, page, tree, 0, &mut BTreeSet::new());
            }
        }
    }
    Ok(())
}

#[test]
fn a_tree_is_named_by_marks_that_were_read_alone() -> Result<()> {
    let key = key()?;
    let known = key.known();
    for page in &key.pages {
        ways(page, 0, &mut Vec::new(), 0, &mut |way, _, left, named| {
            if !named {
                return;
            }
            let tree = &known.trees[left[0]];
            // Again from the start, but only by answers to what was read of it: nothing else is left.
            let here = known.trees.iter().filter(|it| is_for(page, it));
            let by_reading = here.filter(|it| {
                way.iter().all(|(question, answer)| {
                    let question = &known.questions[*question];
                    !tree.was_read(&question.column)
                        || question.stays(it, &question.answers[*answer])
                })
            });
            let names: Vec<&str> = by_reading.map(|it| it.scientific.as_str()).collect();
            assert_eq!(names, [tree.scientific.as_str()], "{}", page.folder());
        });
    }
    Ok(())
}

#[test]
fn a_stalk_is_snapped_only_behind_the_warning() -> Result<()> {
    let key = key()?;
    let known = key.known();
    let mut warned = 0;
    for page in &key.pages {
        let markup = languages::speaking(languages::FIRST, || one(&key, page, "/"))?;
        for (at, step) in page.steps.iter().enumerate() {
            let Step::Ask { question, .. } = step else {
                continue;
            };
            let question = &known.questions[*question];
            let harms = |at: &usize| known.trees[*at].words("touch").next().is_some();
            if !question.hands || !page.trees().any(harms) {
                continue;
            }
            let (_, section) = markup
                .split_once(&format!("id=\"s{at}\""))
                .expect("the step is there");
            let warning = section.find("class=\"note\"").expect("a warning");
            let answers = section.find("class=\"looks").expect("answers");
            assert!(warning < answers, "{}, step {at}", page.folder());
            warned += 1;
        }
    }
    assert!(warned > 0, "{warned} warnings");
    for column in ["sap", "inner_bark_or_pith", "smell"] {
        let asked = known.questions.iter().find(|it| it.column == column);
        assert!(asked.is_some_and(|it| it.hands), "{column}");
    }
    Ok(())
}

#[test]
fn every_link_of_a_step_leads_somewhere_in_every_language() -> Result<()> {
    let key = key()?;
    for language in languages::all() {
        languages::speaking(language, || -> Result<()> {
            let pages = pages(&key)?;
            let folders: Vec<String> = pages
                .iter()
                .map(|(folder, _)| format!("/{folder}"))
                .collect();
            for (folder, page) in &pages {
                let ids: BTreeSet<&str> = page
                    .split("id=\"")
                    .skip(1)
                    .filter_map(|rest| rest.split('"').next())
                    .collect();
                for link in page.split("href=\"").skip(1) {
                    let link = link.split('"').next().unwrap_or_default();
                    if let Some(id) = link.strip_prefix('#') {
                        assert!(ids.contains(id), "{folder}: #{id}");
                    } else if link.starts_with("/key/") {
                        assert!(folders.iter().any(|it| it == link), "{folder}: {link}");
                    }
                }
            }
            Ok(())
        })?;
    }
    Ok(())
}

#[test]
fn a_page_of_the_key_weighs_no_more_than_any_page_may() -> Result<()> {
    let key = key()?;
    for language in languages::all() {
        languages::speaking(language, || -> Result<()> {
            for (folder, page) in pages(&key)? {
                expect_light(&format!("{language} {folder}"), &page)?;
            }
            Ok(())
        })?;
    }
    Ok(())
}
