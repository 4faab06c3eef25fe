//! Teeth, waves and spines along a line.

use super::Point;
use calc::terms::leaf::Margin;

/// What one tooth is: points along a step (0 to 1) and how far each stands out, as a share of the tooth's height.
struct Teeth {
    /// How long a step is, in lengths of the blade.
    step: f64,
    high: f64,
    points: &'static [Point],
}

fn teeth(margin: Margin) -> Option<Teeth> {
    let (step, high, points): (f64, f64, &[Point]) = match margin {
        Margin::Smooth | Margin::Gland => return None,
        Margin::Wavy => (0.17, 0.02, &[[0.25, 0.7], [0.5, 1.0], [0.75, 0.7]]),
        Margin::Fine => (0.036, 0.014, &[[0.85, 1.0]]),
        Margin::Coarse => (0.09, 0.034, &[[0.45, 0.12], [0.9, 1.0]]),
        Margin::Blunt => (0.075, 0.026, &[[0.2, 0.75], [0.5, 1.0], [0.8, 0.75]]),
        Margin::Double => (
            0.1,
            0.038,
            &[
                [0.24, 0.5],
                [0.3, 0.1],
                [0.54, 0.75],
                [0.6, 0.25],
                [0.9, 1.0],
            ],
        ),
        Margin::Bristle => (0.14, 0.05, &[[0.5, 0.1], [0.9, 1.0]]),
        Margin::Spiny => (0.2, 0.09, &[[0.3, -0.25], [0.6, -0.2], [0.97, 1.0]]),
    };
    Some(Teeth { step, high, points })
}

/// Towards which end of a line teeth run out.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Fading {
    /// Both: the side of a blade.
    Both,
    /// The start: the side of a lobe, down from its tip.
    Start,
    /// The end: the side of a lobe, up to its tip.
    End,
}

impl Fading {
    /// What is left of a tooth's height at a share of the line.
    fn at(self, share: f64) -> f64 {
        let left = match self {
            Self::Both => (share * 6.0).min((1.0 - share) * 6.0).max(0.35),
            Self::Start => share * 1.6 - 0.3,
            Self::End => (1.0 - share) * 1.6 - 0.3,
        };
        left.clamp(0.0, 1.0)
    }
}

/// The line with its teeth. Its ends stay; `coarser` makes larger teeth, as on a lobe.
pub(super) fn toothed(line: &[Point], margin: Margin, coarser: f64, fading: Fading) -> Vec<Point> {
    let Some(Teeth { step, high, points }) = teeth(margin) else {
        return line.to_vec();
    };
    let whole = length(line);
    let count = libm::round(whole / (step * coarser)).max(1.0);
    let mut edge = Vec::new();
    for i in 0..count as usize {
        let (from, to) = (
            along(line, whole * i as f64 / count),
            along(line, whole * (i + 1) as f64 / count),
        );
        let way = [to[0] - from[0], to[1] - from[1]];
        let long = libm::hypot(way[0], way[1]).max(1e-9);
        let out = [way[1] / long, -way[0] / long];
        let fade = fading.at((i as f64 + 0.5) / count);
        edge.push(from);
        for [share, stands] in points {
            let base = along(line, whole * (i as f64 + share) / count);
            let h = high * coarser * stands * fade;
            edge.push([base[0] + out[0] * h, base[1] + out[1] * h]);
        }
    }
    edge.extend(line.last());
    edge
}

fn length(line: &[Point]) -> f64 {
    line.windows(2)
        .map(|w| libm::hypot(w[1][0] - w[0][0], w[1][1] - w[0][1]))
        .sum()
}

/// The point of a line at a distance from its start.
fn along(line: &[Point], mut far: f64) -> Point {
    for w in line.windows(2) {
        let long = libm::hypot(w[1][0] - w[0][0], w[1][1] - w[0][1]);
        if far <= long {
            let share = if long > 0.0 { far / long } else { 0.0 };
            return [
                w[0][0] + (w[1][0] - w[0][0]) * share,
                w[0][1] + (w[1][1] - w[0][1]) * share,
            ];
        }
        far -= long;
    }
    *line.last().unwrap_or(&[0.0, 0.0])
}
