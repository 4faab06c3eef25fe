//! Numbers to people: rounded once, here, no finer than the source; both units, the reader's first.

use calc::terms::quantity::{M_PER_FT, MM_PER_IN, Units};
use calc::terms::small::decimals::fixed;
use chrono::{Datelike, NaiveDate};

use crate::words::message::with_decimal_sign;
use crate::words::{m, phrase as w};

/// One length in both systems.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Both {
    /// As `14½ in`.
    pub us: String,
    /// As `37 cm`.
    pub metric: String,
}

impl Both {
    /// The reader's unit first, the other in brackets: `14½ in (37 cm)`.
    pub fn text(&self, units: Units) -> String {
        let (first, second) = self.ordered(units);
        cat!(first, " (", second, ")")
    }

    /// The reader's unit, then the other.
    pub fn ordered(&self, units: Units) -> (&str, &str) {
        match units {
            Units::Us => (&self.us, &self.metric),
            Units::Metric => (&self.metric, &self.us),
        }
    }

    /// The reader's unit alone.
    pub fn first(&self, units: Units) -> &str {
        self.ordered(units).0
    }

    /// The reader's unit with its name spelled out, for those who listen: `14½ inches`.
    pub fn spoken(&self, units: Units) -> String {
        let mut spoken = String::new();
        for word in self.first(units).split(' ') {
            if !spoken.is_empty() {
                spoken.push(' ');
            }
            spoken.push_str(w::spoken_unit(word));
        }
        spoken
    }

    /// As the drawings take it.
    pub fn drawn(&self) -> crate::draw::Reading<'_> {
        crate::draw::Reading {
            us: &self.us,
            metric: &self.metric,
        }
    }
}

/// What is lost by rounding is not a step: keeps `14.500001` from becoming 15.
const GRAIN: f64 = 1e-6;

/// Rounds half up to whole steps.
fn near(value: f64, step: f64) -> f64 {
    libm::floor(value / step + 0.5 + GRAIN) * step
}

/// Rounds up to whole steps.
fn up(value: f64, step: f64) -> f64 {
    libm::ceil(value / step - GRAIN) * step
}

/// A whole number with a quarter behind it: `14½`, `¾`, `6`.
pub fn quarters(value: f64) -> String {
    let all = libm::floor(value * 4.0 + 0.5) as u64;
    let part = ["", "¼", "½", "¾"][(all % 4) as usize];
    match (all / 4, part) {
        (0, part) if !part.is_empty() => part.into(),
        (whole, part) => cat!(fixed(whole as f64, 0), part),
    }
}

/// A number with at most so many decimals, zeros at the end left off.
pub fn plain(value: f64, places: u32) -> String {
    let text = fixed(value, places);
    if text.contains('.') {
        with_decimal_sign(text.trim_end_matches('0').trim_end_matches('.').into())
    } else {
        text
    }
}

/// Ring width: each unit rounded **up**, to half an inch and to a centimetre.
pub fn ring(mm: f64) -> Both {
    Both {
        us: cat!(quarters(up(mm / MM_PER_IN, 0.5)), " in"),
        metric: cat!(fixed(up(mm / 10.0, 1.0), 0), " cm"),
    }
}

/// Size of a trunk: to half an inch (a quarter where it lies on one, or under 4 in), and to a millimetre.
pub fn size(mm: f64) -> Both {
    let inches = mm / MM_PER_IN;
    let quarter = near(inches, 0.25);
    let fine = inches < 4.0 || libm::fabs(inches - quarter) < 0.01;
    let shown = if fine { quarter } else { near(inches, 0.5) };
    Both {
        us: if shown > 0.0 {
            cat!(quarters(shown), " in")
        } else {
            cat!(with_decimal_sign(fixed(inches, 2)), " in")
        },
        metric: cat!(plain(mm / 10.0, 1), " cm"),
    }
}

/// Size of a trunk as it was read, to a tenth of an inch.
pub fn size_read(mm: f64) -> Both {
    let inches = mm / MM_PER_IN;
    let quarter = near(inches, 0.25);
    Both {
        us: if libm::fabs(inches - quarter) < 0.005 && quarter > 0.0 {
            cat!(quarters(quarter), " in")
        } else {
            cat!(plain(inches, if inches < 1.0 { 2 } else { 1 }), " in")
        },
        metric: cat!(plain(mm / 10.0, 1), " cm"),
    }
}

/// Bark, one side: a tenth of an inch and a millimetre, finer where it is thin.
pub fn bark(mm: f64) -> Both {
    let inches = mm / MM_PER_IN;
    Both {
        us: cat!(plain(inches, if inches < 0.2 { 2 } else { 1 }), " in"),
        metric: cat!(plain(mm, if mm < 3.0 { 1 } else { 0 }), " mm"),
    }
}

/// Feet and inches, never decimal feet; whole feet from 20 up.
fn feet(m: f64) -> String {
    let ft = m / M_PER_FT;
    let whole = libm::floor(ft + 0.5);
    if ft >= 20.0 || libm::fabs(ft - whole) < 0.02 {
        return cat!(fixed(whole, 0), " ft");
    }
    let inches = libm::floor(ft * 12.0 + 0.5) as u64;
    let (feet, rest) = (inches / 12, inches % 12);
    match (feet, rest) {
        (feet, 0) => cat!(fixed(feet as f64, 0), " ft"),
        (0, rest) => cat!(fixed(rest as f64, 0), " in"),
        (feet, rest) => cat!(fixed(feet as f64, 0), " ft ", fixed(rest as f64, 0), " in"),
    }
}

/// A height or a distance.
pub fn length(m: f64) -> Both {
    Both {
        us: feet(m),
        metric: cat!(plain(m, if m < 10.0 { 1 } else { 0 }), " m"),
    }
}

/// A height above the sea, or below it: whole feet, whole metres.
pub fn above_sea(m: f64) -> Both {
    let whole = |value: f64| fixed(value, 0).replace('-', "−");
    Both {
        us: cat!(whole(m / M_PER_FT), " ft"),
        metric: cat!(whole(m), " m"),
    }
}

/// A reach that is relied on: each unit rounded up to a whole one.
pub fn reach(m: f64) -> Both {
    Both {
        us: cat!(fixed(up(m / M_PER_FT, 1.0), 0), " ft"),
        metric: cat!(fixed(up(m, 1.0), 0), " m"),
    }
}

/// Minutes: to 5 from 10 up, else to 1, never 0.
pub fn whole_minutes(minutes: f64) -> f64 {
    if minutes >= 10.0 {
        near(minutes, 5.0)
    } else {
        libm::fmax(1.0, near(minutes, 1.0))
    }
}

/// Minutes in digits.
pub fn minutes(minutes: f64) -> String {
    fixed(whole_minutes(minutes), 0)
}

/// From this many minutes on hours are easier to read.
const HOURS_FROM: f64 = 180.0;

/// Low, likely and high in the unit that suits the likely one: minutes, or hours to a half.
pub fn span_of_minutes(low: f64, likely: f64, high: f64) -> ([String; 3], bool) {
    let hours = likely >= HOURS_FROM;
    let show = |value: f64| {
        if hours {
            quarters(near(value / 60.0, 0.5).max(0.5))
        } else {
            minutes(value)
        }
    };
    ([show(low), show(likely), show(high)], hours)
}

/// A share in 100, whole.
pub fn percent(value: f64) -> String {
    fixed(value, 0)
}

/// Years to a half.
pub fn years(value: f64) -> String {
    quarters(near(value, 0.5))
}

/// A month by its number, counted from 1.
fn month(number: u32) -> &'static str {
    let at = (number as usize).clamp(1, 12) - 1;
    m::MEASURE_MONTHS.text().split(' ').nth(at).unwrap_or("")
}

/// `12 June`.
pub fn day(date: NaiveDate) -> String {
    m::measure_day(date.day(), month(date.month()))
}

/// `12 June 2027`.
pub fn day_year(date: NaiveDate) -> String {
    m::measure_with_year(day(date), date.year())
}

/// The longest date that a number to carry has room for: `12 June`.
const SHORT_DAY: usize = 7;
/// The longest stretch, or date with a year, that stands below one.
const SHORT_BELOW: usize = 17;

/// A day in at most seven characters: `12 June`, `26 Sep`.
pub fn day_short(date: NaiveDate) -> String {
    let whole = day(date);
    if whole.chars().count() <= SHORT_DAY {
        whole
    } else {
        m::measure_day_short(date.day(), month_short(date.month()))
    }
}

/// A day with its year, in few characters: `26 June 2028`, `26 Sep 2028`.
pub fn day_year_short(date: NaiveDate) -> String {
    let whole = day_year(date);
    if whole.chars().count() < SHORT_BELOW - 1 {
        whole
    } else {
        m::measure_with_year_short(day_short(date), date.year())
    }
}

/// From one day to another without a year: `12 to 26 June`, `26 Sep to 24 Oct`.
pub fn days_short(from: NaiveDate, to: NaiveDate) -> String {
    if from == to {
        return day_short(from);
    }
    let fits = |text: &String| text.chars().count() <= SHORT_BELOW;
    if from.month() == to.month() && from.year() == to.year() {
        let of_month = |month: &'static str| {
            m::measure_days_of_month_short(m::MeasureDaysOfMonthShort {
                from: from.day(),
                to: to.day(),
                month,
            })
        };
        let whole = of_month(month(to.month()));
        return if fits(&whole) {
            whole
        } else {
            of_month(month_short(to.month()))
        };
    }
    let span = |from: String, to: String| m::measure_days_short(m::MeasureDaysShort { from, to });
    let whole = span(day(from), day(to));
    if fits(&whole) {
        return whole;
    }
    let short = |date: NaiveDate| m::measure_day_short(date.day(), month_short(date.month()));
    span(short(from), short(to))
}

/// A month in three letters by its number, counted from 1.
pub(crate) fn month_short(number: u32) -> &'static str {
    let at = (number as usize).clamp(1, 12) - 1;
    m::MEASURE_MONTHS_SHORT
        .text()
        .split(' ')
        .nth(at)
        .unwrap_or("")
}

/// A reading as its number and its unit; one of two units (`7 ft 7 in`) stays whole.
pub fn parted(reading: &str) -> (&str, &str) {
    match reading.split_once(' ') {
        Some((number, unit)) if !unit.contains(' ') => (number, unit),
        _ => (reading, ""),
    }
}

/// A day, with its year where that is another one than `beside`.
pub fn day_beside(date: NaiveDate, beside: Option<NaiveDate>) -> String {
    if beside.is_some_and(|other| other.year() == date.year()) {
        day(date)
    } else {
        day_year(date)
    }
}

/// From one day to another: `26 June to 24 July 2027`; whole months by their names.
pub fn days(from: NaiveDate, to: NaiveDate) -> String {
    if from.year() == to.year() {
        m::measure_with_year(days_of_year(from, to), to.year())
    } else {
        m::measure_days(m::MeasureDays {
            from: day_year(from),
            to: day_year(to),
        })
    }
}

/// Days of one year, without it.
fn days_of_year(from: NaiveDate, to: NaiveDate) -> String {
    let one = from.month() == to.month();
    let (first, second) = (month(from.month()), month(to.month()));
    let last = to.succ_opt().is_none_or(|next| next.day() == 1);
    match (from.day() == 1 && last, one) {
        (true, true) => first.into(),
        (true, false) => m::measure_whole_months(m::MeasureWholeMonths {
            from: first,
            to: second,
        }),
        (false, true) => m::measure_days_of_month(m::MeasureDaysOfMonth {
            from: from.day(),
            to: to.day(),
            month: first,
        }),
        (false, false) => m::measure_days(m::MeasureDays {
            from: day(from),
            to: day(to),
        }),
    }
}

/// Several spans: those of one year are named once with it, `May, July and September 2028`.
pub fn several(spans: &[(NaiveDate, NaiveDate)]) -> String {
    let year = spans.first().map_or(0, |(from, _)| from.year());
    let one = |(from, to): &(NaiveDate, NaiveDate)| from.year() == year && to.year() == year;
    let said = |say: fn(NaiveDate, NaiveDate) -> String| {
        let said: Vec<String> = spans.iter().map(|(from, to)| say(*from, *to)).collect();
        w::row(&said)
    };
    if spans.iter().all(one) {
        m::measure_with_year(said(days_of_year), year)
    } else {
        said(days)
    }
}

/// Month and day: `1 April`.
pub fn month_day(md: (u8, u8)) -> String {
    m::measure_day(md.1, month(u32::from(md.0)))
}

/// From one month and day to another: `1 April to 15 July`.
pub fn month_days(from: (u8, u8), to: (u8, u8)) -> String {
    m::measure_days(m::MeasureDays {
        from: month_day(from),
        to: month_day(to),
    })
}

/// Digits of a small whole number.
pub fn number(value: u32) -> String {
    fixed(f64::from(value), 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ring_widths_are_rounded_up_in_each_unit() {
        for (mm, us, metric) in [
            (150.0, "6 in", "15 cm"),
            (152.4, "6 in", "16 cm"),
            (368.3, "14½ in", "37 cm"),
            (368.4, "15 in", "37 cm"),
            (203.2, "8 in", "21 cm"),
            (500.0, "20 in", "50 cm"),
        ] {
            let ring = ring(mm);
            assert_eq!((&*ring.us, &*ring.metric), (us, metric), "{mm}");
        }
        for tenth in 1..6000 {
            let mm = f64::from(tenth) / 10.0;
            let ring = ring(mm);
            let cm: f64 = ring.metric.trim_end_matches(" cm").parse().unwrap();
            assert!(cm * 10.0 >= mm - 1e-4, "{mm} became {}", ring.metric);
        }
    }

    #[test]
    fn feet_are_never_decimal() {
        assert_eq!(length(2.3).us, "7 ft 7 in");
        assert_eq!(length(1.7).us, "5 ft 7 in");
        assert_eq!(length(30.48).us, "100 ft");
        assert_eq!(length(0.3).us, "1 ft");
        assert_eq!(length(0.25).us, "10 in");
        for cm in 1..10_000 {
            assert!(!length(f64::from(cm) / 100.0).us.contains('.'));
        }
    }

    #[test]
    fn sizes_go_to_half_an_inch_or_the_quarter_given() {
        assert_eq!(size(14.5 * 25.4).us, "14½ in");
        assert_eq!(size(14.25 * 25.4).us, "14¼ in");
        assert_eq!(
            size(350.0),
            Both {
                us: "14 in".into(),
                metric: "35 cm".into()
            }
        );
        assert_eq!(size(0.75 * 25.4).us, "¾ in");
        assert_eq!(size_read(350.0).us, "13.8 in");
    }

    #[test]
    fn minutes_carry_no_false_precision() {
        assert_eq!(minutes(0.2), "1");
        assert_eq!(minutes(7.4), "7");
        assert_eq!(minutes(12.4), "10");
        assert_eq!(minutes(22.6), "25");
        assert_eq!(span_of_minutes(100.0, 400.0, 900.0).0, ["1½", "6½", "15"]);
    }

    #[test]
    fn spans_of_days_name_whole_months() {
        let on = |y, m, d| NaiveDate::from_ymd_opt(y, m, d).unwrap();
        assert_eq!(days(on(2027, 5, 1), on(2027, 5, 31)), "May 2027");
        assert_eq!(
            days(on(2027, 9, 1), on(2027, 10, 31)),
            "September to October 2027"
        );
        assert_eq!(
            days(on(2027, 6, 26), on(2027, 7, 24)),
            "26 June to 24 July 2027"
        );
        assert_eq!(
            days(on(2027, 12, 26), on(2028, 1, 24)),
            "26 December 2027 to 24 January 2028"
        );
    }
}
