package dev.towerscribe.placement;

import dev.towerscribe.alignment.NotReached;
import dev.towerscribe.layout.quick.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;

/**
 * Looks for places: first on a coarse grid over all of the range, then closer and closer round the
 * best of it, down to the lattice's own steps. The answer depends on the job alone: every part of
 * the work is the same whichever thread does it, and ties fall to the place that comes first.
 *
 * <p>What it gives: a place that passes every check and is no worse than any within three of the
 * lattice's steps of it. That no better one lies elsewhere is not proved, but on a lattice of whole
 * degrees and millimetres it is the best of all on the demo. Example: with a coarse step of 2
 * degrees and mm, and 1, 0.5, 0.2 and 0.1 after it, rotations from 0 to 90 and offsets of 30 mm
 * each way are some 44 000 places to begin with, at each setting, and a few thousand more for each
 * of eight starts.
 */
final class PlacementSearch {
  /** What a place may be best at. */
  enum Want {
    /** The aims. */
    AIMS("best for the aims"),
    /** Caster alone. */
    CASTER("most caster"),
    /** Little bump steer. */
    BUMP_STEER("least bump steer"),
    /** Little metal taken. */
    METAL("least metal removed"),
    /** Room at the edges. */
    ROOM("most room at the edges");

    private final String words;

    Want(String words) {
      this.words = words;
    }

    /** What a place is that is best at it. */
    String words() {
      return words;
    }
  }

  /** Coarse step, in degrees and about as many millimetres. */
  private static final double COARSE = 2.0;

  /** Least steps over a range. */
  private static final int LEAST_STEPS = 8;

  /** Closer and closer, in degrees and millimetres; the last step is the lattice's own. */
  private static final double[] FINE = {1.0, 0.5, 0.2, 0.0};

  /** Every rotation's best is brought this many of those steps closer before they are compared. */
  private static final int FIRST = 2;

  /** How many steps each way those first looks go, how many the later ones. */
  private static final int FIRST_BOX = 1;

  private static final int BOX = 2;

  /** The last look goes further, to get along a narrow ridge. */
  private static final int LAST_BOX = 3;

  /** How many places are looked at as closely as the lattice allows. */
  private static final int STARTS = 8;

  private final Lattice lattice;
  private final Workers workers;
  private final Bounds bounds;
  private final AtomicLong looked = new AtomicLong();
  private List<List<Candidate>> coarse = List.of();

  /** What the checks said of places where a quick answer was not to be had. */
  private final Map<Lattice.Place, Boolean> asked = new ConcurrentHashMap<>();

  /** The range in steps of the lattice. */
  private record Bounds(int r0, int r1, int a0, int a1, int b0, int b1) {
    boolean hold(int r, int a, int b) {
      return r >= r0 && r <= r1 && a >= a0 && a <= a1 && b >= b0 && b <= b1;
    }
  }

  /** A place of the coarse grid that is not known to be stopped. */
  private record Candidate(
      Lattice.Place place, boolean sure, double aims, double caster, boolean within) {}

  /** A place with its score. */
  record Best(Lattice.Place place, double score, double aims, double caster) {}

  private static final Comparator<Best> ORDER =
      Comparator.comparingDouble((Best b) -> -b.score())
          .thenComparingDouble(b -> -b.aims())
          .thenComparingInt(b -> b.place().rotation())
          .thenComparingInt(b -> b.place().rearward())
          .thenComparingInt(b -> b.place().inboard())
          .thenComparingInt(b -> b.place().setting());

  PlacementSearch(Lattice lattice, SearchRange range, Workers workers) {
    this.lattice = lattice;
    this.workers = workers;
    int degree = lattice.anglesPerDegree();
    bounds =
        new Bounds(
            (int) Math.ceil(range.rotationFrom() * degree),
            (int) Math.floor(range.rotationTo() * degree),
            lattice.places(range.rearwardFrom()),
            lattice.places(range.rearwardTo()),
            lattice.places(range.inboardFrom()),
            lattice.places(range.inboardTo()));
  }

  /** How many placements were looked at. */
  long looked() {
    return looked.get();
  }

  /** Whether a place lies within the range. */
  boolean holds(Lattice.Place p) {
    return bounds.hold(p.rotation(), p.rearward(), p.inboard());
  }

  /** A small range is looked over in smaller steps. */
  private static List<Integer> steps(int from, int to, int most) {
    int step = Math.max(1, Math.min(most, (to - from) / LEAST_STEPS));
    return IntStream.iterate(from, i -> i <= to, i -> i + step).boxed().toList();
  }

  /** Looks over the whole range. */
  void look() throws NotReached {
    int turn = (int) Math.round(COARSE * lattice.anglesPerDegree());
    int shift = lattice.places(COARSE);
    List<Integer> rotations = steps(bounds.r0(), bounds.r1(), turn);
    List<Integer> rearwards = steps(bounds.a0(), bounds.a1(), shift);
    List<Integer> inboards = steps(bounds.b0(), bounds.b1(), shift);
    coarse =
        workers.share(
            rotations.size(),
            0.0,
            0.4,
            (index, score) -> row(rotations.get(index), rearwards, inboards, score));
  }

  private List<Candidate> row(
      int rotation, List<Integer> rearwards, List<Integer> inboards, Score score) {
    List<Candidate> row = new ArrayList<>();
    int settings = lattice.settings().size();
    for (int rearward : rearwards) {
      for (int inboard : inboards) {
        Answer answer = score.quick(rotation, rearward, inboard);
        if (answer == Answer.NO) {
          continue;
        }
        for (int s = 0; s < settings; s++) {
          Lattice.Place place = new Lattice.Place(rotation, rearward, inboard, s);
          if (score.read(place)) {
            row.add(
                new Candidate(
                    place, answer == Answer.YES, score.aims(), score.caster(), score.within()));
          }
        }
      }
    }
    looked.addAndGet((long) rearwards.size() * inboards.size() * settings);
    return row;
  }

  /**
   * The best place for one thing.
   *
   * @param want which
   * @param floor least score for the aims that a place may have
   * @param from progress at the start
   * @param to progress at the end
   * @return the place, or nothing if there is none
   */
  Optional<Best> best(Want want, double floor, double from, double to) throws NotReached {
    List<Optional<Best>> ofRows =
        workers.share(
            coarse.size(),
            from,
            (from + to) / 2,
            (index, score) ->
                ofRow(coarse.get(index), want, floor, score)
                    .map(best -> closer(best, FIRST, want, floor, score)));
    List<Best> starts =
        ofRows.stream().flatMap(Optional::stream).sorted(ORDER).limit(STARTS).toList();
    List<Best> ends =
        workers.share(
            starts.size(),
            (from + to) / 2,
            to,
            (index, score) -> closer(starts.get(index), FINE.length, want, floor, score));
    return ends.stream().min(ORDER);
  }

  private Optional<Best> ofRow(List<Candidate> row, Want want, double floor, Score score) {
    List<Ranked> ranked = new ArrayList<>();
    for (Candidate c : row) {
      if (c.aims() < floor || want == Want.CASTER && !c.within()) {
        continue;
      }
      double value =
          switch (want) {
            case AIMS -> c.aims();
            case CASTER -> c.caster();
            default -> {
              score.read(c.place());
              yield value(want, c.place(), score);
            }
          };
      ranked.add(new Ranked(new Best(c.place(), value, c.aims(), c.caster()), c.sure()));
    }
    return firstThatStands(ranked, score);
  }

  /** A place with its score, and whether the metal is known to allow it. */
  private record Ranked(Best best, boolean sure) {}

  /** The checks themselves cost much, so they are asked from the best place downward. */
  private Optional<Best> firstThatStands(List<Ranked> ranked, Score score) {
    return ranked.stream()
        .sorted(Comparator.comparing(Ranked::best, ORDER))
        .filter(one -> one.sure() || stands(one.best().place(), score))
        .map(Ranked::best)
        .findFirst();
  }

  private boolean stands(Lattice.Place p, Score score) {
    return asked.computeIfAbsent(
        new Lattice.Place(p.rotation(), p.rearward(), p.inboard(), 0),
        q -> score.allows(q.rotation(), q.rearward(), q.inboard()));
  }

  /** The score of the place just read. */
  private static double value(Want want, Lattice.Place place, Score score) {
    return switch (want) {
      case AIMS -> score.aims();
      case CASTER -> score.within() ? score.caster() : Double.NEGATIVE_INFINITY;
      case BUMP_STEER -> score.bumpSteer();
      case METAL -> score.metal(place);
      case ROOM -> score.room(place);
    };
  }

  private Best closer(Best start, int to, Want want, double floor, Score score) {
    Best best = start;
    for (int i = 0; i < to; i++) {
      int turn = Math.max(1, (int) Math.round(FINE[i] * lattice.anglesPerDegree()));
      int shift = Math.max(1, lattice.places(FINE[i]));
      int box = i == FINE.length - 1 ? LAST_BOX : to == FINE.length ? BOX : FIRST_BOX;
      Best before;
      do {
        before = best;
        best = around(best, turn, shift, box, want, floor, score);
      } while (best != before);
    }
    return best;
  }

  private Best around(
      Best centre, int turn, int shift, int steps, Want want, double floor, Score score) {
    List<Ranked> better = new ArrayList<>();
    Lattice.Place c = centre.place();
    int settings = lattice.settings().size();
    for (int i = -steps; i <= steps; i++) {
      for (int j = -steps; j <= steps; j++) {
        for (int k = -steps; k <= steps; k++) {
          int r = c.rotation() + i * turn;
          int a = c.rearward() + j * shift;
          int b = c.inboard() + k * shift;
          if (!bounds.hold(r, a, b)) {
            continue;
          }
          looked.addAndGet(settings);
          Answer answer = score.quick(r, a, b);
          for (int s = 0; s < settings && answer != Answer.NO; s++) {
            Lattice.Place place = new Lattice.Place(r, a, b, s);
            if (!score.read(place) || score.aims() < floor) {
              continue;
            }
            Best here = new Best(place, value(want, place, score), score.aims(), score.caster());
            if (ORDER.compare(here, centre) < 0) {
              better.add(new Ranked(here, answer == Answer.YES));
            }
          }
        }
      }
    }
    return firstThatStands(better, score).orElse(centre);
  }
}
