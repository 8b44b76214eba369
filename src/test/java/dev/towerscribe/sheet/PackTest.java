package dev.towerscribe.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.towerscribe.SampleJobs;
import dev.towerscribe.drawing.Page;
import dev.towerscribe.layout.JobLayout;
import dev.towerscribe.layout.Layout;
import dev.towerscribe.quantity.LengthUnit;
import dev.towerscribe.sheet.text.JobInfo;
import dev.towerscribe.sheet.tower.RulerPage;
import java.util.List;
import org.junit.jupiter.api.Test;

class PackTest {
  @Test
  void pagesComeInTheOrderOfUseUnderNamesOfTheirOwn() throws Exception {
    JobLayout layout =
        Layout.of(SampleJobs.job(SampleJobs.fullTower(), SampleJobs.plate(true), s -> s));
    JobInfo info = TextPageSamples.info(LengthUnit.MM, List.of());
    List<Page> pages = SheetFixtures.pack(layout, info);
    List<String> stems = pages.stream().map(Page::fileStem).toList();
    assertThat(stems).doesNotHaveDuplicates();
    assertThat(pages.stream().map(Page::label)).doesNotHaveDuplicates();
    assertThat(pages.stream().map(Page::title)).doesNotHaveDuplicates();
    assertThat(stems.subList(0, 2)).containsExactly("caution", "caution-2");
    assertThat(pages.get(2))
        .isEqualTo(
            RulerPage.page(
                layout.job().sides().values().iterator().next().print(),
                java.util.Optional.of(info)));
    // Both sides, left first, each kind in its place.
    List<String> kinds =
        stems.subList(3, stems.size()).stream()
            .map(s -> s.replaceAll("-[0-9]+$", "").replaceAll("-(notch).*", "-$1"))
            .distinct()
            .toList();
    assertThat(kinds.subList(0, 5))
        .containsExactly(
            "left-findings", "left-steps", "left-calipers", "left-underside", "left-topside");
    assertThat(kinds.indexOf("right-findings")).isGreaterThan(kinds.indexOf("left-topside"));
    assertThat(kinds).contains("right-steps", "right-calipers", "right-underside");
    assertThat(SheetFixtures.pack(layout, info)).isEqualTo(pages);
  }
}
