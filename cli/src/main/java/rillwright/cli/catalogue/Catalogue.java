package rillwright.cli.catalogue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveLoss;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.network.PipeWall;
import rillwright.solver.network.PipeWall.WhenWarm;

/**
 * What the program knows by name. Names match whatever their case and spaces, sizes whatever their
 * spelling ({@code 1-1/2 in}, {@code 1 1/2 in}, {@code 1.5 in}).
 *
 * <p>Each kind is read when it is first asked for.
 */
public final class Catalogue {
  private static final Catalogue STANDARD = new Catalogue();

  private final Lazy<List<Material>> materials =
      new Lazy<>(() -> CatalogueTable.read("materials.csv", Material::of));
  private final Lazy<Map<String, Material>> materialsByName =
      new Lazy<>(
          () ->
              listMaterials().stream()
                  .collect(
                      Collectors.toMap(
                          material -> Spelling.plain(material.name()),
                          Function.identity(),
                          (first, later) -> first)));
  private final Lazy<Map<String, Lazy<List<PipeSize>>>> pipesByMaterial =
      new Lazy<>(this::readPipes);
  private final Lazy<List<FittingLoss>> fittings =
      new Lazy<>(() -> readLosses("fittings.csv", FittingLoss::of));
  private final Lazy<List<CheckValveRow>> checkValves =
      new Lazy<>(() -> readLosses("check-valves.csv", CheckValveRow::of));
  private final Lazy<List<ValveOpening>> openValves =
      new Lazy<>(() -> readLosses("valves.csv", ValveOpening::ofOpen));
  private final Lazy<List<Lip>> lips = new Lazy<>(() -> CatalogueTable.read("lips.csv", Lip::of));
  private final Lazy<List<Bed>> beds = new Lazy<>(() -> CatalogueTable.read("beds.csv", Bed::of));
  private final Lazy<List<PipeEnd>> ends =
      new Lazy<>(() -> CatalogueTable.read("ends.csv", PipeEnd::of));
  private final Lazy<List<Device>> devices =
      new Lazy<>(() -> CatalogueTable.read("devices.csv", Device::of));

  private Catalogue() {}

  /** The catalogue that comes with the program. */
  public static Catalogue standard() {
    return STANDARD;
  }

  /** The pipe of a material and size. */
  public Optional<PipeSize> findPipe(String material, String size) {
    List<PipeSize> pipes = pipesOf(material);
    return pipes.stream()
        .filter(pipe -> pipe.size().equals(size))
        .findFirst()
        .or(() -> pipes.stream().filter(pipe -> Spelling.sameSize(pipe.size(), size)).findFirst());
  }

  /** The pipe that a label is of: {@code 2 in flexible PVC}. */
  public Optional<PipeSize> findPipeOfLabel(String label) {
    return listPipes().stream().filter(pipe -> pipe.label().equals(label)).findFirst();
  }

  /** A material of pipes. */
  public Optional<Material> findMaterial(String name) {
    return Optional.ofNullable(materialsByName.get().get(Spelling.plain(name)));
  }

  /** Names of the materials. */
  public List<String> materials() {
    return listMaterials().stream().map(Material::name).toList();
  }

  /** Sizes of a material, from small to large, inches before millimetres; none if unknown. */
  public List<String> sizesOf(String material) {
    return pipesOf(material).stream().map(PipeSize::size).toList();
  }

  /**
   * The next smaller and the next larger size of a material, of those in the unit that is written
   * if there are any; none if what is written is no length.
   */
  public List<String> sizesAround(String material, String written) {
    return Spelling.around(written, sizesOf(material));
  }

  /** The loss of a fitting in a bore, where it depends on the size that of the nearest one. */
  public Optional<FittingLoss> findFitting(String type, Bore bore) {
    return Sized.nearest(listFittings(), type, bore);
  }

  /** Types of fittings. */
  public List<String> fittingTypes() {
    return names(listFittings(), FittingLoss::type);
  }

  /** A check valve in a bore, where it depends on the size that of the nearest one. */
  public Optional<CheckValveRow> findCheckValve(String type, Bore bore) {
    return Sized.nearest(listCheckValves(), type, bore);
  }

  /** Types of check valves. */
  public List<String> checkValveTypes() {
    return names(listCheckValves(), CheckValveRow::type);
  }

  /** The loss of a type of valve against opening in a bore, open that of the nearest size. */
  public Optional<ValveLoss> findValve(String type, Bore bore) {
    return Sized.nearest(openValves.get(), type, bore).map(ValveOpening::loss);
  }

  /** Types of valves. */
  public List<String> valveTypes() {
    return names(Arrays.asList(ValveTravel.values()), ValveTravel::word);
  }

  /** A fall's lip. */
  public Optional<Lip> findLip(String name) {
    return find(listLips(), Lip::name, name);
  }

  /** Names of lips. */
  public List<String> lips() {
    return names(listLips(), Lip::name);
  }

  /** A stream bed. */
  public Optional<Bed> findBed(String name) {
    return find(listBeds(), Bed::name, name);
  }

  /** Names of stream beds. */
  public List<String> beds() {
    return names(listBeds(), Bed::name);
  }

  /** All materials of pipes. */
  public List<Material> listMaterials() {
    return materials.get();
  }

  /** All pipes. */
  public List<PipeSize> listPipes() {
    return pipesByMaterial.get().values().stream().flatMap(pipes -> pipes.get().stream()).toList();
  }

  /** All fittings. */
  public List<FittingLoss> listFittings() {
    return fittings.get();
  }

  /** All check valves. */
  public List<CheckValveRow> listCheckValves() {
    return checkValves.get();
  }

  /** All published openings of all valves. */
  public List<ValveOpening> listValveOpenings() {
    return ValveOpening.list(openValves.get());
  }

  /** All lips. */
  public List<Lip> listLips() {
    return lips.get();
  }

  /** All stream beds. */
  public List<Bed> listBeds() {
    return beds.get();
  }

  /** All kinds of pipe ends. */
  public List<PipeEnd> listEnds() {
    return ends.get();
  }

  /** All kinds of filters, UV units, meters and venturis. */
  public List<Device> listDevices() {
    return devices.get();
  }

  /** All skimmer mouths. */
  public List<SkimmerMouth> listSkimmers() {
    return SkimmerMouth.all();
  }

  private List<PipeSize> pipesOf(String material) {
    return Optional.ofNullable(pipesByMaterial.get().get(Spelling.plain(material)))
        .map(Lazy::get)
        .orElse(List.of());
  }

  /** The pipes of each material, whose numbers are read when that material is first asked for. */
  private Map<String, Lazy<List<PipeSize>>> readPipes() {
    Map<String, List<WhenWarm>> warm =
        CatalogueTable.read("warm.csv", WarmRow::of).stream()
            .collect(
                Collectors.groupingBy(
                    WarmRow::series, Collectors.mapping(WarmRow::point, Collectors.toList())));
    Map<String, List<TableRow>> rows =
        CatalogueTable.read("pipes.csv", Function.identity()).stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.text("material"), LinkedHashMap::new, Collectors.toList()));
    Map<String, Lazy<List<PipeSize>>> pipes = new LinkedHashMap<>();
    rows.forEach(
        (material, sizes) ->
            pipes.put(
                Spelling.plain(material),
                new Lazy<>(
                    () ->
                        sizes.stream()
                            .map(row -> pipe(row, findMaterial(material).orElseThrow(), warm))
                            .toList())));
    return pipes;
  }

  private static <T> List<T> readLosses(
      String file, BiFunction<TableRow, RoughFriction.SizedLoss, T> maker) {
    List<RoughFriction> sizes = CatalogueTable.read("rough-friction.csv", RoughFriction::of);
    return CatalogueTable.read(file, row -> RoughFriction.expand(row, sizes, maker)).stream()
        .flatMap(Function.identity())
        .toList();
  }

  /** A row of the table of what is left of a pressure rating. */
  private record WarmRow(String series, WhenWarm point) {
    static WarmRow of(TableRow row) {
      return new WarmRow(
          row.text("series"), new WhenWarm(row.number("celsius"), row.number("share")));
    }
  }

  private static PipeSize pipe(TableRow row, Material material, Map<String, List<WhenWarm>> warm) {
    double inside = row.lengthM("inside");
    Optional<Double> thickness =
        row.lengthIfAnyM("wall")
            .or(() -> row.lengthIfAnyM("outside").map(outside -> (outside - inside) / 2));
    Optional<PipeWall> wall =
        row.pressureIfAnyPa("rating")
            .map(
                rating ->
                    new PipeWall(
                        thickness.orElseThrow(),
                        material.elasticModulusPa().orElseThrow(),
                        rating,
                        warm.getOrDefault(material.warm(), List.of())));
    return new PipeSize(
        material, row.text("size"), inside, wall, row.source() + "; " + material.source());
  }

  private static <T> Optional<T> find(List<T> rows, Function<T, String> name, String wanted) {
    String plain = Spelling.plain(wanted);
    return rows.stream().filter(row -> Spelling.isSpelling(name.apply(row), plain)).findFirst();
  }

  private static <T> List<String> names(List<T> rows, Function<T, String> name) {
    return rows.stream().map(name).distinct().toList();
  }
}
