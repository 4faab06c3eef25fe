//! The season of a whole property: which trees on which work day, and their visits.
//!
//! ```text
//! need(known, question, local, days, slip) -> Need   what one tree asks of a plan: its days, minutes, visits
//! Property { trees, profiles, classes, days, units }      the whole list, with the hours of each day
//! solve(&Property) -> Plan                                a day or none for each tree, and a day for each visit
//! solve_kept(&Property, before) -> Plan      the same with the days of an earlier plan, which stay unless forced
//! prices(&Property) -> Priced                             what a minute of each day is worth, and the bound they prove
//! kill_rates(known, trees, today)                         after the work: what share died, with its interval
//! open_visits(...) -> Vec<OpenVisit>                      visits that a tree ringed before still needs
//! next_look(...) -> Option<NaiveDate>                     the day by which somebody looks at it again
//! gaps(dying, land) -> Vec<CrownGap>                      what opens where trees die, and how many trees fill it
//! ```
//!
//! A plan has no rule of its own: on which days a tree may be ringed is [`calc::answer::ring_days`], minutes and visits
//! are those of the answer. It reads no clock, draws no random number but from a fixed seed, and puts rows that are alike in the order of their
//! ids, so that two runs, native or in a browser, give the same plan.
//!
//! The method is Lagrangian: each minute of a day has a price, found by subgradient steps; at those prices every tree
//! picks its own best day, which bounds what any plan can reach (Fisher 1981, "The Lagrangian relaxation method for
//! solving integer programming problems"; from memory). A greedy plan along the prices, filled up and mended by swaps,
//! comes within a few per cent of it, and the gap is given.

mod anneal;
mod build;
mod canopy;
mod fingerprint;
mod follow;
mod greedy;
mod judged;
mod kept;
mod limits;
mod list_tree;
mod listed;
mod market;
mod mend;
mod need;
mod open_visits;
mod oracle;
pub mod plan_file;
mod price;
mod property;
mod replant;
mod rests;
mod route;
mod season;
mod solve;
mod teams;
mod walk;
mod walk_charge;

pub use build::{Builder, Listed, PlanningConstants};
pub use canopy::{Canopy, closure, crowns_for};
pub use fingerprint::fingerprint;
pub use follow::{KillRate, LookedAt, RingedTree, ShareOf, kill_rates, rings_that_held};
pub use judged::{ComesTo, JudgedTree, crown_m2, judge};
pub use kept::{EarlierDays, Kept, KeptDays, KeptTree};
pub use limits::{Bind, LooserLimit, binds, binds_in_steps};
pub use list_tree::{AfterRing, ListTree, OpenVisit, Position, Progress};
pub use listed::{CountedAs, SeasonPlan, plan_list, plan_list_in_steps};
pub use market::Prices;
pub use need::{Need, need, on_ring_day};
pub use open_visits::{next_look, open_visits};
pub use plan_file::shape::PlanFile;
pub use plan_file::{PlanFileFacts, plan_file, plan_file_in_steps};
pub use price::{Priced, prices};
pub use property::{Enter, PlanTree, PlanUnit, Profile, Property, RingDay, VisitNeed, WorkDay};
pub use replant::{CrownGap, gaps};
pub use rests::{InSteps, Rests};
pub use season::{Crew, UnitLand, WorkSeason};
pub use solve::{NotPlanned, Plan, Planned, PlannedVisit, solve, solve_kept};
pub use teams::{Turn, share_out};
pub use walk::{WalkTold, Walked};
