package dev.towerscribe.writer.dxf;

import static dev.towerscribe.drawing.Unreadable.must;

import dev.towerscribe.drawing.Unreadable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Whether the handles of a file of release 2000 are unique and lead where they have to. */
final class DxfHandles {
  private static final Pattern HANDLE = Pattern.compile("[0-9A-F]{1,8}");

  /** Owner of what nothing owns. */
  private static final String NONE = "0";

  private static final int OWNER = 330;
  private static final List<Integer> POINTERS = List.of(OWNER, 340, 350, 360, 390);

  private final Map<String, DxfRecord> byHandle = new HashMap<>();
  private final List<String> complaints;

  private DxfHandles(List<String> complaints) {
    this.complaints = complaints;
  }

  /** Checks a file and adds what is wrong with it. */
  static void check(DxfReader file, List<String> complaints) throws Unreadable {
    DxfHandles handles = new DxfHandles(complaints);
    List<DxfRecord> all = new ArrayList<>();
    for (DxfReader.Table table : file.tables().values()) {
      all.add(table.head());
      all.addAll(table.entries());
    }
    for (String section : List.of("BLOCKS", "ENTITIES", "OBJECTS")) {
      all.addAll(file.section(section));
    }
    for (DxfRecord record : all) {
      handles.take(record);
    }
    all.forEach(handles::follow);
    handles.owners(file);
    long seed = number(file.variable("$HANDSEED").text(5));
    boolean past = handles.byHandle.keySet().stream().allMatch(h -> number(h) < seed);
    handles.expect(past, "the seed of handles is not past all handles");
  }

  private void expect(boolean holds, String complaint) {
    if (!holds) {
      complaints.add(complaint);
    }
  }

  /** -1 for what is no handle. */
  private static long number(String handle) {
    return HANDLE.matcher(handle).matches() ? Long.parseLong(handle, 16) : -1;
  }

  private static String handle(DxfRecord record) throws Unreadable {
    // Group 5 of a dimension style's entry is taken for something else.
    return record.text(record.type().equals("DIMSTYLE") ? 105 : 5);
  }

  private static String owner(DxfRecord record) throws Unreadable {
    List<String> owners = record.all(OWNER);
    must(!owners.isEmpty(), "a " + record.type() + " without an owner");
    return owners.get(0);
  }

  private void take(DxfRecord record) throws Unreadable {
    String handle = handle(record);
    if (number(handle) <= 0) {
      complaints.add("a " + record.type() + " has the handle \"" + handle + "\"");
    } else if (byHandle.put(handle, record) != null) {
      complaints.add("the handle " + handle + " is not unique");
    }
  }

  private void follow(DxfRecord record) {
    for (DxfRecord.Group group : record.groups()) {
      if (POINTERS.contains(group.code())
          && !group.value().equals(NONE)
          && !byHandle.containsKey(group.value())) {
        complaints.add("a " + record.type() + " points to no record: " + group.value());
      }
    }
  }

  private void owners(DxfReader file) throws Unreadable {
    for (DxfReader.Table table : file.tables().values()) {
      expectOwner(table.head(), NONE);
      for (DxfRecord entry : table.entries()) {
        expectOwner(entry, handle(table.head()));
      }
    }
    DxfReader.Table spaces = file.tables().get("BLOCK_RECORD");
    Map<String, String> spaceByName = new HashMap<>();
    if (spaces != null) {
      for (DxfRecord space : spaces.entries()) {
        spaceByName.put(space.text(2), handle(space));
        boolean laid = !space.text(340).equals(NONE);
        expect(laid, "the block record " + space.text(2) + " has no layout");
      }
    }
    String model = spaceByName.get("*Model_Space");
    if (model == null) {
      complaints.add("there is no model space");
      return;
    }
    for (DxfRecord entity : file.section("ENTITIES")) {
      expectOwner(entity, model);
    }
    String within = NONE;
    for (DxfRecord part : file.section("BLOCKS")) {
      if (part.type().equals("BLOCK")) {
        boolean known = spaceByName.containsKey(part.text(2));
        expect(known, "the block " + part.text(2) + " has no block record");
        within = known ? spaceByName.remove(part.text(2)) : NONE;
      }
      expectOwner(part, within);
    }
    expect(spaceByName.isEmpty(), "a block record has no block");
    objects(file.section("OBJECTS"));
  }

  /** The first object owns all others, by way of dictionaries that name them. */
  private void objects(List<DxfRecord> objects) throws Unreadable {
    if (objects.isEmpty()) {
      complaints.add("there is no root dictionary");
      return;
    }
    expectOwner(objects.get(0), NONE);
    Set<String> named = new HashSet<>();
    for (DxfRecord object : objects) {
      for (String entry : object.all(350)) {
        named.add(handle(object) + ">" + entry);
      }
    }
    for (DxfRecord object : objects.subList(1, objects.size())) {
      boolean byOwner = named.contains(owner(object) + ">" + handle(object));
      expect(byOwner, "a " + object.type() + " is not named by its owner");
    }
  }

  private void expectOwner(DxfRecord record, String expected) throws Unreadable {
    String owner = owner(record);
    expect(
        owner.equals(expected),
        "a %s is owned by %s instead of %s".formatted(record.type(), owner, expected));
  }
}
