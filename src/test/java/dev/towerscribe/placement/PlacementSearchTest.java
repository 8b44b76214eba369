package dev.towerscribe.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.towerscribe.Tries;
import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.drawing.Lettering;
import dev.towerscribe.job.JobReader;
import dev.towerscribe.job.Templates;
import dev.towerscribe.layout.quick.Answer;
import dev.towerscribe.layout.quick.MountCheck;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The search against every place of a lattice, one after another. */
class PlacementSearchTest {
  private static final int THREADS = 2;

  private static Job job;
  private static MountCheck check;

  @BeforeAll
  static void read() throws Exception {
    job =
        new JobReader(Lettering::canWrite)
            .parse(Templates.text("wren.toml"), name -> Optional.empty());
    check = MountCheck.of(job, StrutRodPoses::of);
  }

  private static Lattice lattice(int perUnit) {
    return new Lattice(LengthUnit.MM, perUnit, perUnit, Lattice.of(job).settings());
  }

  private static double searched(Lattice lattice, SearchRange range) throws NotReached {
    Workers workers = new Workers(THREADS, () -> new Score(job, lattice, check), f -> {});
    PlacementSearch search = new PlacementSearch(lattice, range, workers);
    search.look();
    return search
        .best(PlacementSearch.Want.AIMS, Double.NEGATIVE_INFINITY, 0, 1)
        .orElseThrow()
        .score();
  }

  private static double everyPlace(Lattice lattice, SearchRange range) throws NotReached {
    Score score = new Score(job, lattice, check);
    double best = Double.NEGATIVE_INFINITY;
    int degree = lattice.anglesPerDegree();
    for (int r = (int) Math.round(range.rotationFrom() * degree);
        r <= range.rotationTo() * degree;
        r++) {
      for (int a = lattice.places(range.rearwardFrom());
          a <= lattice.places(range.rearwardTo());
          a++) {
        for (int b = lattice.places(range.inboardFrom());
            b <= lattice.places(range.inboardTo());
            b++) {
          if (score.quick(r, a, b) == Answer.NO) {
            continue;
          }
          for (int s = 0; s < lattice.settings().size(); s++) {
            if (score.read(new Lattice.Place(r, a, b, s))
                && score.aims() > best
                && score.allows(r, a, b)) {
              score.read(new Lattice.Place(r, a, b, s));
              best = score.aims();
            }
          }
        }
      }
    }
    return best;
  }

  @Test
  void findsTheVeryBestOfAWholeDegreeAndMillimetreLattice() throws NotReached {
    // Independent: every one of 91 x 61 x 61 x 3 places. Equal to rounding, not to a step.
    double expected = everyPlace(lattice(1), SearchRange.USUAL);
    assertThat(searched(lattice(1), SearchRange.USUAL)).isCloseTo(expected, within(1e-12));
  }

  @Tag("simulation")
  @Test
  void noBetterPlaceOnATenTimesFinerGridThanAStepExplains() throws NotReached {
    // A step of a tenth moves the bearing by 0.1 mm rearward, 0.1 mm inboard and, by rotation,
    // 24 mm (bearing at the far setting) times 0.1 deg = 0.04 mm. A millimetre is score a tenth of
    // a degree of caster and 0.3 of a tenth of camber (common practice, no source, 10 mm a degree),
    // 0.13 in all and a fifth more to be sure of it.
    double step = (0.1 + 0.1 + 0.042) * 0.13 * 1.2;
    for (SearchRange small :
        List.of(
            new SearchRange(64.2, 65.0, 12.6, 13.4, -0.4, 0.4),
            new SearchRange(70.0, 70.8, 10.0, 11.0, 0.0, 0.8),
            new SearchRange(44.6, 45.4, 10.6, 11.4, 5.4, 6.2))) {
      double coarse = searched(lattice(10), small);
      double fine = everyPlace(lattice(100), small);
      assertThat(fine - coarse).isBetween(-1e-12, step);
    }
  }

  @Tag("more-tries")
  @Test
  void offersAreTheSameForAnyCountOfThreads() throws Exception {
    List<Offer> one =
        Placements.find(job, new Placements.Settings(SearchRange.USUAL, 1, false), f -> {})
            .offers();
    for (int threads = Tries.of(3, 2); threads <= 3; threads++) {
      assertThat(
              Placements.find(
                      job, new Placements.Settings(SearchRange.USUAL, threads, false), f -> {})
                  .offers())
          .isEqualTo(one);
    }
  }
}
