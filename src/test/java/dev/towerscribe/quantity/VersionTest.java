package dev.towerscribe.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class VersionTest {
  @Test
  void isTheBuilds() throws Exception {
    // The project's own version is the first in its build file.
    String build = Files.readString(Path.of("pom.xml"));
    int start = build.indexOf("<version>") + "<version>".length();
    assertThat(Version.TEXT).isEqualTo(build.substring(start, build.indexOf("</version>")));
  }
}
