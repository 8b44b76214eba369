package dev.towerscribe.store;

import dev.towerscribe.drilled.Readings;
import dev.towerscribe.model.Job;
import dev.towerscribe.quantity.Version;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.TreeSet;

/**
 * A short code that is printed on every sheet of a pack, so that sheets of two states of a job are
 * not mixed up. The same facts give the same code on every machine.
 */
public final class PackMark {
  /** Letters in a code: 32^6 is about 1e9, so that two states of one job hardly ever share one. */
  private static final int LENGTH = 6;

  /** Five bits a letter; I, L, O and U left out, as one takes them for 1, 1, 0 and V. */
  private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int BITS = 5;

  private PackMark() {}

  /**
   * The code of a job's sheets.
   *
   * @param job the job
   * @param acceptedIds findings that were accepted, in any order
   * @return six letters and digits
   */
  public static String of(Job job, Collection<String> acceptedIds) {
    return of(JobFacts.of(job), acceptedIds);
  }

  /**
   * The code of a page about drilled holes.
   *
   * @param jobMark the code of the job: it says which sheets the holes were drilled by
   * @param readings what was read of them
   * @param acceptedIds findings of the readings that were accepted, in any order
   * @return six letters and digits
   */
  public static String of(String jobMark, Readings readings, Collection<String> acceptedIds) {
    return of(ReadingsFacts.of(jobMark, readings), acceptedIds);
  }

  private static String of(Facts facts, Collection<String> acceptedIds) {
    facts.put("program", Version.TEXT);
    new TreeSet<>(acceptedIds).forEach(id -> facts.put("accepted", id));
    return code(facts.toString());
  }

  /** The first thirty bits of the hash of a text. */
  static String code(String text) {
    byte[] hash = sha256().digest(text.getBytes(StandardCharsets.UTF_8));
    StringBuilder mark = new StringBuilder(LENGTH);
    long bits = Integer.toUnsignedLong(ByteBuffer.wrap(hash).getInt());
    for (int i = 0; i < LENGTH; i++) {
      mark.append(LETTERS.charAt((int) (bits >>> 32 - BITS * (i + 1)) & 31));
    }
    return mark.toString();
  }

  /**
   * The hash used for marks and lists.
   *
   * @return a fresh SHA-256 (FIPS 180-4), which every Java platform has
   */
  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
