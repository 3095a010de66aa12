//! How far raters agree who sort the same things into categories.

/// Quantile of the normal distribution that leaves 2.5 % above it.
const Z_95: f64 = 1.959_963_984_540_054;

/// Agreement beyond chance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kappa {
    /// How many things all the raters sorted.
    pub things: usize,
    /// Share of agreement that was seen, 0 to 1.
    pub agreement: f64,
    /// Share of it beyond chance: 1 where all agree, 0 as by chance.
    pub kappa: f64,
    /// Its 95 % interval.
    pub interval: [f64; 2],
}

impl Kappa {
    fn of(things: usize, agreement: f64, by_chance: f64, standard_error: f64) -> Self {
        let kappa = (agreement - by_chance) / (1.0 - by_chance);
        let reach = Z_95 * standard_error;
        Self {
            things,
            agreement,
            kappa,
            interval: [(kappa - reach).max(-1.0), (kappa + reach).min(1.0)],
        }
    }
}

/// Cohen's kappa of two raters, each thing given by the numbers of the categories
/// that they chose (Cohen 1960), with its interval for large samples (Fleiss, Cohen
/// and Everitt 1969). `None` where nothing was sorted, or a rater put all of it into one
/// category: then nothing can be said beyond chance.
#[must_use]
pub fn cohen(sorted: &[[usize; 2]]) -> Option<Kappa> {
    let categories = sorted.iter().flatten().max()? + 1;
    let count = sorted.len() as f64;
    let mut table = vec![vec![0.0; categories]; categories];
    for [one, other] in sorted {
        table[*one][*other] += 1.0 / count;
    }
    let rows: Vec<f64> = table.iter().map(|row| row.iter().sum()).collect();
    let columns: Vec<f64> = (0..categories)
        .map(|j| table.iter().map(|row| row[j]).sum())
        .collect();
    let agreement: f64 = (0..categories).map(|i| table[i][i]).sum();
    let by_chance: f64 = rows.iter().zip(&columns).map(|(r, c)| r * c).sum();
    let is_undivided = |shares: &[f64]| shares.iter().filter(|share| **share > 0.0).count() == 1;
    if is_undivided(&rows) || is_undivided(&columns) {
        return None;
    }
    let off = 1.0 - (agreement - by_chance) / (1.0 - by_chance);
    let mut variance = -(1.0 - off - by_chance * off).powi(2);
    for (i, row) in table.iter().enumerate() {
        for (j, share) in row.iter().enumerate() {
            let weight = if i == j {
                1.0 - (rows[i] + columns[i]) * off
            } else {
                off * (columns[i] + rows[j])
            };
            variance += share * weight.powi(2);
        }
    }
    let standard_error = (variance.max(0.0) / count).sqrt() / (1.0 - by_chance);
    Some(Kappa::of(
        sorted.len(),
        agreement,
        by_chance,
        standard_error,
    ))
}

/// Fleiss' kappa of three raters or more (Fleiss 1971). Each thing is given by how many
/// of the raters chose each category, as many raters for each thing; the interval is by
/// the jackknife over things (Tukey 1958). `None` for fewer than two things or raters, or
/// where all of it was sorted into one category.
#[must_use]
pub fn fleiss(chosen: &[Vec<u32>]) -> Option<Kappa> {
    let [agreement, by_chance] = shares(chosen.iter())?;
    let kappa_of = |[seen, chance]: [f64; 2]| (seen - chance) / (1.0 - chance);
    let without: Option<Vec<f64>> = (0..chosen.len())
        .map(|left_out| {
            let kept = chosen.iter().enumerate();
            let kept = kept.filter(|(number, _)| *number != left_out);
            shares(kept.map(|(_, thing)| thing)).map(kappa_of)
        })
        .collect();
    let without = without?;
    let count = without.len() as f64;
    let mean = without.iter().sum::<f64>() / count;
    let squares: f64 = without.iter().map(|k| (k - mean).powi(2)).sum();
    let standard_error = ((count - 1.0) / count * squares).sqrt();
    Some(Kappa::of(
        chosen.len(),
        agreement,
        by_chance,
        standard_error,
    ))
}

/// Share of agreement that was seen, and that by chance.
fn shares<'a>(chosen: impl Iterator<Item = &'a Vec<u32>> + Clone) -> Option<[f64; 2]> {
    let raters = f64::from(chosen.clone().next()?.iter().sum::<u32>());
    let things = chosen.clone().count() as f64;
    if raters < 2.0 {
        return None;
    }
    let of_thing = |thing: &Vec<u32>| {
        let squares: f64 = thing.iter().map(|&n| f64::from(n).powi(2)).sum();
        (squares - raters) / (raters * (raters - 1.0))
    };
    let agreement = chosen.clone().map(of_thing).sum::<f64>() / things;
    let categories = chosen.clone().map(Vec::len).max()?;
    let by_chance: f64 = (0..categories)
        .map(|j| {
            let all: u32 = chosen.clone().filter_map(|thing| thing.get(j)).sum();
            (f64::from(all) / (things * raters)).powi(2)
        })
        .sum();
    (by_chance < 1.0).then_some([agreement, by_chance])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sorted(table: &[&[usize]]) -> Vec<[usize; 2]> {
        let cells = table
            .iter()
            .enumerate()
            .flat_map(|(i, row)| row.iter().enumerate().map(move |(j, n)| ([i, j], *n)));
        cells
            .flat_map(|(cell, n)| std::iter::repeat_n(cell, n))
            .collect()
    }

    /// By statsmodels 0.14, `stats.inter_rater.cohens_kappa`: kappa and its 95 % interval.
    #[test]
    fn two_raters_as_a_reference_library_has_them() {
        let small: &[&[usize]] = &[&[20, 5], &[10, 15]];
        let large: &[&[usize]] = &[&[10, 2, 1], &[3, 12, 4], &[0, 5, 9]];
        for (table, kappa, interval) in [
            (small, 0.4, [0.151_092_290, 0.648_907_710]),
            (large, 0.503_597_122, [0.293_943_625, 0.713_250_620]),
        ] {
            let found = cohen(&sorted(table)).unwrap();
            assert!((found.kappa - kappa).abs() < 1e-8, "{found:?}");
            for (found, wanted) in found.interval.into_iter().zip(interval) {
                assert!((found - wanted).abs() < 1e-8, "{found} {wanted}");
            }
        }
    }

    /// By statsmodels 0.14, `stats.inter_rater.fleiss_kappa`: ten things, 14 raters.
    #[test]
    fn many_raters_as_a_reference_library_has_them() {
        let chosen = [
            [0, 0, 0, 0, 14],
            [0, 2, 6, 4, 2],
            [0, 0, 3, 5, 6],
            [0, 3, 9, 2, 0],
            [2, 2, 8, 1, 1],
            [7, 7, 0, 0, 0],
            [3, 2, 6, 3, 0],
            [2, 5, 3, 2, 2],
            [6, 5, 2, 1, 0],
            [0, 2, 2, 3, 7],
        ]
        .map(Vec::from);
        let found = fleiss(&chosen).unwrap();
        assert!((found.kappa - 0.209_930_704).abs() < 1e-8, "{found:?}");
        assert!(found.interval[0] < 0.21 && found.interval[1] > 0.21);
    }

    #[test]
    fn agreement_without_a_choice_is_not_beyond_chance() {
        assert_eq!(cohen(&[[1, 1], [1, 1]]), None);
        assert_eq!(cohen(&[[0, 1], [1, 1]]), None);
        assert_eq!(cohen(&[]), None);
        assert_eq!(fleiss(&[vec![3, 0], vec![3, 0]]), None);
        assert_eq!(fleiss(&[]), None);
        let alike = cohen(&[[0, 0], [1, 1], [2, 2]]).unwrap();
        assert!((alike.kappa - 1.0).abs() < 1e-12);
        assert!((alike.interval[1] - alike.interval[0]).abs() < 1e-6);
    }
}
