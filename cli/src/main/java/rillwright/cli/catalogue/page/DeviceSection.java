package rillwright.cli.catalogue.page;

import static rillwright.cli.catalogue.page.Digits.fixed;
import static rillwright.cli.catalogue.page.Digits.range;
import static rillwright.cli.catalogue.page.Digits.three;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.Device;
import rillwright.curves.unit.Unit;

/** The section about filters, UV units, meters and venturis. */
final class DeviceSection {
  private DeviceSection() {}

  static Section<Device> of(Catalogue catalogue) {
    List<Column<Device>> columns = new ArrayList<>();
    List<Field<Device>> fields = new ArrayList<>();
    columns.add(Column.words("device", Device::name));
    fields.add(Field.words("name", "Which.", Device::name));
    add("clean", Device::clean, columns, fields);
    add("dirty", Device::dirty, columns, fields);
    columns.add(Column.number("n", device -> three(device.exponent())));
    fields.add(
        Field.number("exponent", NUMBER.from(1), "Of the flow to the rated.", Device::exponent));
    return new Section<>(
        "devices",
        "devices",
        "head lost at the rated flow, to write as filter: {rating: {flow, head, exponent: n}}",
        catalogue.listDevices(),
        device -> List.of(device.name()),
        columns,
        fields,
        Device::source);
  }

  private static void add(
      String state,
      Function<Device, Device.Head> head,
      List<Column<Device>> columns,
      List<Field<Device>> fields) {
    columns.add(
        Column.number(
            state + " ft", device -> fixed(Unit.FOOT.fromSi(head.apply(device).usualM()), 1)));
    columns.add(Column.number(state + " m", device -> three(head.apply(device).usualM())));
    columns.add(
        Column.words(
            "range m",
            device -> range(head.apply(device).leastM(), head.apply(device).greatestM())));
    String capital = state.substring(0, 1).toUpperCase(Locale.ROOT) + state.substring(1);
    fields.add(
        Field.number(
            state + "HeadM",
            METRES.from(0),
            "Head lost when " + state + ".",
            device -> head.apply(device).usualM()));
    fields.add(
        Field.number(
            "least" + capital + "HeadM",
            METRES.from(0),
            "Least that is usual.",
            device -> head.apply(device).leastM()));
    fields.add(
        Field.number(
            "greatest" + capital + "HeadM",
            METRES.from(0),
            "Greatest that is usual.",
            device -> head.apply(device).greatestM()));
  }
}
