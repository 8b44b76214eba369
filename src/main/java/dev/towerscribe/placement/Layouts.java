package dev.towerscribe.placement;

import dev.towerscribe.alignment.Alignment;
import dev.towerscribe.alignment.JobAlignment;
import dev.towerscribe.alignment.StrutRodPoses;
import dev.towerscribe.finding.Finding;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.finding.Stage;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.layout.SideLayout;
import dev.towerscribe.model.Job;
import dev.towerscribe.model.Side;
import dev.towerscribe.strength.StrengthFindings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Layout and alignment of one job, each with what it takes from the other: the layout's sweep
 * counts the strut's poses, and each tower's findings include those of its alignment and of its
 * bolts' strength.
 */
public final class Layouts {
  private Layouts() {}

  /**
   * A job worked out.
   *
   * @param layout where everything goes, with every finding
   * @param alignment what a bay will read; without sides if nothing is given to work it out from
   */
  public record Worked(JobLayout layout, JobAlignment alignment) {}

  /**
   * Lays a job out and works its alignment out.
   *
   * @param job the job
   * @return both, of the job with its plates at rest
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static Worked of(Job job) throws JobRejected {
    return of(job, Stage.PLANNED);
  }

  /**
   * Lays a job out and works its alignment out.
   *
   * @param measured the job
   * @param stage how far the work has come: what findings advise
   * @return both, of the job with its plates at rest
   * @throws JobRejected if something lies past the edge of a domed tower top
   */
  public static Worked of(Job measured, Stage stage) throws JobRejected {
    Job job = Layout.atRest(measured);
    JobLayout bare = Layout.of(job, StrutRodPoses::of, stage);
    JobAlignment alignment = Alignment.of(job, stage);
    Map<Side, SideLayout> sides = new EnumMap<>(Side.class);
    bare.sides()
        .forEach(
            (side, layout) -> {
              List<Finding> more = new ArrayList<>();
              Optional.ofNullable(alignment.sides().get(side))
                  .ifPresent(own -> more.addAll(own.findings()));
              more.addAll(alignment.findings());
              more.addAll(StrengthFindings.of(layout, job, stage));
              sides.put(side, layout.withMore(more));
            });
    return new Worked(new JobLayout(job, sides), alignment);
  }

  /**
   * Whether a stop finding is about where the plates are: with it a placement does not stand.
   *
   * @param stop a stop finding of a job
   * @param standing those that stand wherever the plates go
   * @return false for one of these, and for what the bolts carry, which a place hardly changes
   */
  public static boolean judgesPlace(Finding stop, List<Finding> standing) {
    return !stop.check().equals(StrengthFindings.CHECK)
        && standing.stream().noneMatch(f -> f.id().equals(stop.id()));
  }
}
