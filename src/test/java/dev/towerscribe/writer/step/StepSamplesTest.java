package dev.towerscribe.writer.step;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.geometry.Box;
import dev.towerscribe.geometry.FlatSolid;
import dev.towerscribe.geometry.Frame2;
import dev.towerscribe.geometry.Vec2;
import dev.towerscribe.quantity.Numbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Writes parts of every kind for {@code .ci/check-step.py}, which loads them in a CAD kernel. */
class StepSamplesTest {
  private static final Path PLACE = Path.of("target", "step");
  private static final Frame2 MIRROR = new Frame2(Vec2.ZERO, new Vec2(-1, 0), new Vec2(0, 1));

  @Test
  void writesPartsForTheKernel() throws IOException {
    Map<String, FlatSolid> parts = new LinkedHashMap<>();
    parts.put("worked.step", SampleSolids.worked());
    parts.put("worked-mirrored.step", SampleSolids.worked().mapped(MIRROR));
    for (int seed = 0; seed < 22; seed++) {
      parts.put("random-" + seed + ".step", SampleSolids.random(seed));
    }
    Files.createDirectories(PLACE);
    StringBuilder list = new StringBuilder();
    for (Map.Entry<String, FlatSolid> part : parts.entrySet()) {
      byte[] file = StepWriter.write(part.getValue(), SampleSolids.NAME);
      assertThat(StepProof.check(file, part.getValue(), SampleSolids.NAME)).isEmpty();
      Files.write(PLACE.resolve(part.getKey()), file);
      list.append(part.getKey()).append(' ').append(figures(part.getValue())).append('\n');
    }
    Files.writeString(PLACE.resolve("list.txt"), list);
  }

  private static String figures(FlatSolid solid) {
    Box box = solid.outline().bounds();
    return DoubleStream.of(
            solid.volumeMm3(),
            box.minX(),
            box.minY(),
            0,
            box.maxX(),
            box.maxY(),
            solid.thicknessMm())
        .mapToObj(Numbers::exact)
        .collect(Collectors.joining(" "));
  }
}
