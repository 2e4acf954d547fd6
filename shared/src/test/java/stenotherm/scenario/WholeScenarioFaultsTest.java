package stenotherm.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import stenotherm.text.TextFormatException;

/** Each fault in the keys of the whole parcel and the whole journey gives one message. */
class WholeScenarioFaultsTest {
  static Stream<Arguments> ofPackings() {
    return Stream.of(
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "size: 110 x 80 x 60, wall",
            "s.yaml:5:24: containers[0].size (left): '110 x 80 x 60' needs one unit at the end or one for each length, write for example 110 x 80 x 60 mm or 110 x 80 x 60 in"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "size: big cup, wall",
            "s.yaml:5:24: containers[0].size (left): vessel: there is no \"big cup\". Known: 2 fl oz, 4 fl oz, 8 fl oz, 12 fl oz, 16 fl oz, 24 fl oz, 32 fl oz, 9 dram vial, 16 dram vial, 40 dram vial, small lidded box, large lidded box, small cloth bag, large cloth bag. Or write its inner size, 100 x 60 mm if it is round or 110 x 80 x 60 mm"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "size: tiny cloth bag, wall",
            "s.yaml:5:24: containers[0].size (left): vessel: there is no \"tiny cloth bag\". Known: 2 fl oz, 4 fl oz, 8 fl oz, 12 fl oz, 16 fl oz, 24 fl oz, 32 fl oz, 9 dram vial, 16 dram vial, 40 dram vial, small lidded box, large lidded box, small cloth bag, large cloth bag. Or write its inner size, as in {size: 120 x 90 x 50 mm, kind: bag}"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "size: 3 dram vial, wall",
            "s.yaml:5:24: containers[0].size (left): vessel: there is no \"3 dram vial\". Known: 2 fl oz, 4 fl oz, 8 fl oz, 12 fl oz, 16 fl oz, 24 fl oz, 32 fl oz, 9 dram vial, 16 dram vial, 40 dram vial, small lidded box, large lidded box, small cloth bag, large cloth bag. Or write its inner size, as in {size: 15 x 45 mm, kind: vial}"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "kind: vial, size: 110 x 80 x 60 mm, wall",
            "s.yaml:5:36: containers[0].size (left): must be the diameter and the height of a vial, write for example 100 x 60 mm"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "kind: jar, size: 110 x 80 x 60 mm, wall",
            "s.yaml:5:24: containers[0].kind (left): unknown name 'jar', allowed are box cup, round cup, bag, vial"),
        arguments(
            "size: 110 x 80 x 60 mm, wall",
            "along: width, size: 110 x 80 x 60 mm, wall",
            "s.yaml:5:18: containers[0].along (left): is for vials only"),
        arguments(
            "wall: PET 0.5 mm",
            "wall: PET",
            "s.yaml:5:48: containers[0].wall (left): must be a material and a thickness with its unit, write for example EPS 20 19 mm or EPS 20 3/4 in"),
        arguments(
            "wall: PET 0.5 mm",
            "wall: PET 0.5 m",
            "s.yaml:5:48: containers[0].wall (left): wall of a vessel: 0.5 m must lie between 0 m and 10 mm. Is it in millimetres?"),
        arguments(
            "wall: PET 0.5 mm",
            "wall: PET -0.5 mm",
            "s.yaml:5:48: containers[0].wall (left): thickness of a layer of PET: -0.5 mm must be above 0"),
        arguments(
            "holes: 12 x 3 mm",
            "holes: many",
            "s.yaml:53:73: packings[3].cup.holes (carton): must be how many holes and how wide, write for example 8 x 2 mm, or none"),
        arguments(
            "holes: 12 x 3 mm",
            "holes: 12 x 30 mm",
            "s.yaml:53:73: packings[3].cup.holes (carton): diameter of a hole in a lid: 30 mm must lie between 0.3 mm and 20 mm. Keepers punch holes of some 2 mm."),
        arguments(
            "size: small lidded box, animal",
            "size: small lidded box with 6 holes, animal",
            "s.yaml:53:17: packings[3].cup.size (carton): holes have a key of their own, in a file for example {size: small lidded box, holes: 8 x 2 mm}; without it so many count"),
        arguments(
            "holes: 12 x 3 mm",
            "holes: 12 x 3 mm on side",
            "s.yaml:53:73: packings[3].cup.holes (carton): '3 mm on side' is not a length, the unit must be one of mm, cm, m, in, ft"),
        arguments(
            "size: small lidded box, animal",
            "size: small cloth bag, animal",
            "s.yaml:53:65: packings[3].cup.holes (carton): has no effect for a bag: cloth lets air through"),
        arguments(
            "towel: 3 mm",
            "bedding: damp paper towel",
            "s.yaml:5:69: containers[0].bedding (left): must be a material and a thickness with its unit, write for example damp sphagnum 20 mm or damp sphagnum 3/4 in"),
        arguments(
            "towel: 3 mm",
            "towel: 3 mm, bedding: none",
            "s.yaml:5:60: containers[0].towel (left): cannot be given together with bedding"),
        arguments(
            "towel: 3 mm",
            "towel: 1e-320 mm",
            "s.yaml:8:5: packings[0] (panels): box: Z runs from 0.034 m to 0.034 m; the end must be larger than the start"),
        arguments(
            "towel: 3 mm",
            "towel: 70 mm",
            "s.yaml:5:5: containers[0] (left): the bedding takes 70.0 mm (2.76 in) of height but the container has 60.0 mm (2.36 in): 10.0 mm (0.40 in) too little. Take a larger one, such as '32 fl oz' or '750 ml', or at most 42.9 mm (1.68 in) of bedding"),
        arguments(
            "towel: 3 mm",
            "bedding: [damp coir 5 mm, damp coir 5 mm]",
            "s.yaml:8:5: packings[0] (panels): 'left coir' occurs twice; everything needs a name of its own"),
        arguments(
            "towel: 3 mm",
            "bedding: {material: sand and gravel, thickness: 3 mm, water: 20 %}",
            "s.yaml:5:80: containers[0].bedding.material (left): does not take up a stated mass of water, only dry paper towel, sphagnum, dry, dry coir do"),
        arguments(
            "towel: 3 mm",
            "bedding: {material: dry coir, thickness: 3 mm, water: 20}",
            "s.yaml:5:114: containers[0].bedding.water (left): '20' has no unit, write for example 20 %"),
        arguments(
            "towel: 3 mm",
            "bedding: {material: dry coir, thickness: 3 mm, water: 9000 %}",
            "s.yaml:5:114: containers[0].bedding.water (left): water in dry coir: 90 g/g must lie between 0 g/g and 11.4247 g/g. More would not fit between its fibres."),
        arguments(
            "towel: 3 mm",
            "bedding: {material: dry coir}",
            "s.yaml:5:69: containers[0].bedding.thickness (left): is missing and must be given, write for example thickness: 10 mm"),
        arguments(
            "towel: 3 mm",
            "bedding: {material: dry coir, thick: 3 mm}",
            "s.yaml:5:90: containers[0].bedding.thick (left): unknown key, allowed are material, thickness, water"),
        arguments(
            "size: 4 fl oz, animal",
            "size: 4 fl oz, kind: round cup, animal",
            "s.yaml:6:34: containers[1].kind (right): has no effect for a container known by name"),
        arguments(
            "size: 4 fl oz, animal",
            "size: 4 fl oz cup, along: length, animal",
            "s.yaml:6:38: containers[1].along (right): is for vials only"),
        arguments(
            "{name: right, size",
            "{name: left, size",
            "s.yaml:8:5: packings[0] (panels): 'left' occurs twice; everything needs a name of its own"),
        arguments(
            "{name: right, size",
            "{name: fill, size",
            "s.yaml:8:5: packings[0] (panels): 'fill' is the name of a part of the parcel; choose another one"),
        arguments(
            "animal: 'leopard gecko, 40 g'}",
            "animal: leopard gecko}",
            "s.yaml:5:81: containers[0].animal (left): must be an animal and its mass with its unit, write for example \"leopard gecko, 40 g\""),
        arguments(
            "box: {inner: 260 x 200 x 200 mm}",
            "box: {}",
            "s.yaml:9:10: packings[0].box (panels): must have either outer or inner dimensions"),
        arguments(
            "box: {inner: 260 x 200 x 200 mm}",
            "box: {inner: 260 x 200 x 200 mm, outer: 12 x 12 x 12 in}",
            "s.yaml:9:10: packings[0].box (panels): must have either outer or inner dimensions"),
        arguments(
            "box: {inner: 260 x 200 x 200 mm}",
            "box: {inside: 260 x 200 x 200 mm}",
            "s.yaml:9:11: packings[0].box.inside (panels): unknown key, allowed are outer, inner"),
        arguments(
            "box: {inner: 260 x 200 x 200 mm}",
            "box: 260 x 200 x 200",
            "s.yaml:9:10: packings[0].box (panels): '260 x 200 x 200' needs one unit at the end or one for each length, write for example 260 x 200 x 200 mm or 260 x 200 x 200 in"),
        arguments(
            "foam: XPS 20 mm",
            "foam: []",
            "s.yaml:10:11: packings[0].foam (panels): must not be an empty list, write an item or leave the key out"),
        arguments(
            "foam: XPS 20 mm",
            "foam: [XPS 20 mm, none]",
            "s.yaml:10:23: packings[0].foam[1] (panels): must be a material and a thickness with its unit, write for example EPS 20 19 mm or EPS 20 3/4 in"),
        arguments(
            "foam: XPS 20 mm",
            "foam: {material: XPS}",
            "s.yaml:10:11: packings[0].foam (panels): must be a list: begin each item with '- ', or put it into brackets as in [{key: value}]; it is lines of 'key: value'"),
        arguments(
            "260 x 200 x 10 mm']",
            "10 mm']",
            "s.yaml:11:24: packings[0].sides[1] (panels): '10 mm' is not three lengths, write for example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        arguments(
            "vacuum panel in metallised film, 260 x 200 x 10 mm",
            "vacuum panel in metallised film",
            "s.yaml:11:24: packings[0].sides[1] (panels): needs the panel's length, width and thickness, because heat passes along its edges, write for example vacuum panel in metallised film 300 x 200 x 20 mm"),
        arguments(
            "lid: PIR 25 mm",
            "lid: PIR 25",
            "s.yaml:12:10: packings[0].lid (panels): has no unit, write for example PIR 25 mm"),
        arguments(
            "lid: PIR 25 mm",
            "top: PIR 25 mm",
            "s.yaml:12:5: packings[0].top (panels): unknown key. Did you mean 'lid'?"),
        arguments(
            "left: XPS 25 mm",
            "left: XPSS 25 mm",
            "s.yaml:14:11: packings[0].left (panels): material: there is no \"XPSS\". Did you mean \"XPS\"?"),
        arguments(
            "joints: {gap: 1 mm, overlap",
            "joints: {gap: 20 mm, overlap",
            "s.yaml:18:19: packings[0].joints.gap (panels): gap between panels: 20 mm must lie between 0 mm and 10 mm. A wider gap is an opening."),
        arguments(
            "joints: {gap: 1 mm, overlap",
            "joints: {overlap",
            "s.yaml:18:13: packings[0].joints.gap (panels): is missing and must be given, write for example gap: 10 mm"),
        arguments(
            "overlap: sides over lid and floor",
            "overlap: sides",
            "s.yaml:18:34: packings[0].joints.overlap (panels): unknown name 'sides', allowed are lid and floor over the sides, sides over lid and floor"),
        arguments(
            "joints: 0.5 mm",
            "joints: tight",
            "s.yaml:34:13: packings[1].joints (stacked): 'tight' is not a length, write for example 30 cm or 12 in"),
        arguments(
            "gap: 20 mm",
            "gap: -20 mm",
            "s.yaml:20:10: packings[0].gap (panels): gap between containers: -20 mm must be 0 or above"),
        arguments(
            "gap: 20 mm",
            "gap: 200 mm",
            "s.yaml:8:5: packings[0] (panels): 'left' sticks out of the cavity at the left by 56.0 mm (2.20 in); the cavity is 260.0 x 200.0 x 200.0 mm (10.24 x 7.87 x 7.87 in). It would fit into 372 x 200 x 185 mm (14.7 x 7.9 x 7.3 in) inside"),
        arguments(
            "gap: 20 mm",
            "cup: 8 fl oz",
            "s.yaml:20:10: packings[0].cup.animal (panels): is missing and must be given, write for example animal: \"leopard gecko, 40 g\""),
        arguments(
            "fill: none",
            "fill: nothing",
            "s.yaml:35:11: packings[1].fill (stacked): is written none, for a box with nothing but air in it"),
        arguments(
            "- {name: upper, warmer: 40 hour warmer on lid, offset",
            "- {name: upper, warmer: 40 hour warmer, offset",
            "s.yaml:22:31: packings[0].warmers[0].warmer (panels, upper): must say where the warmer is, write for example 40 hour warmer on lid, or give its position"),
        arguments(
            "warmer on lid, offset",
            "warmer on roof, offset",
            "s.yaml:22:31: packings[0].warmers[0].warmer (panels, upper): unknown name 'roof', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax"),
        arguments(
            "warmer on lid, offset",
            "warmer on side, offset",
            "s.yaml:22:31: packings[0].warmers[0].warmer (panels, upper): 'side' does not say which of the four, write left or right (the ends of the box's first length), front or back (the ends of its second)"),
        arguments(
            "offset: [10 mm, -5 mm]",
            "offset: [10 mm]",
            "s.yaml:22:62: packings[0].warmers[0].offset (panels, upper): must have 2 items, not 1"),
        arguments(
            "offset: [10 mm, -5 mm]",
            "offset: 10 mm",
            "s.yaml:22:62: packings[0].warmers[0].offset (panels, upper): must be a list, not a single value"),
        arguments(
            "offset: [10 mm, -5 mm]",
            "offset: [90 mm, 0 mm]",
            "s.yaml:8:5: packings[0] (panels): 'upper' sticks out of the cavity at the right by 24.0 mm (0.94 in); the cavity is 260.0 x 200.0 x 200.0 mm (10.24 x 7.87 x 7.87 in). Here 'upper' has room on lid or right. It would fit into 308 x 200 x 185 mm (12.2 x 7.9 x 7.3 in) inside, such as a carton of 16 x 12 x 10 in or 40 x 30 x 30 cm"),
        arguments(
            "offset: [10 mm, -5 mm]",
            "position: [10 mm, -5 mm]",
            "s.yaml:22:54: packings[0].warmers[0].position (panels, upper): cannot be given together with 'on'"),
        arguments(
            "offset: [10 mm, -5 mm]",
            "thin: height",
            "s.yaml:22:54: packings[0].warmers[0].thin (panels, upper): has no effect for a warmer on a face"),
        arguments(
            "stand-off: 5 mm, opened",
            "stand-off: 5 mm, contact: 0.02 m2 K/W, opened",
            "s.yaml:22:95: packings[0].warmers[0].contact (panels, upper): has no effect with a stand-off"),
        arguments(
            "stand-off: 5 mm, opened",
            "oxygen: 21 %, opened",
            "s.yaml:22:78: packings[0].warmers[0].oxygen (panels, upper): unknown key, allowed are name, warmer, opened, film, stand-off, contact, offset, position, thin"),
        arguments(
            "opened: at sealing",
            "opened: after sealing",
            "s.yaml:22:103: packings[0].warmers[0].opened (panels, upper): must be a time before sealing, as nobody reaches into a sealed box, write for example 30 min before sealing, or at sealing"),
        arguments(
            "position: [0 mm, 70 mm, 90 mm], thin",
            "position: [0 mm], thin",
            "s.yaml:23:44: packings[0].warmers[1].position (panels): must be the distances from the middle along length and width, and if wanted the height above the floor, write for example [10 mm, 0 mm]"),
        arguments(
            "position: [0 mm, 70 mm, 90 mm], thin",
            "position: [0 mm, 170 mm, 90 mm], thin",
            "s.yaml:8:5: packings[0] (panels): 'warmer 2' sticks out of the cavity at the back by 72.0 mm (2.83 in); the cavity is 260.0 x 200.0 x 200.0 mm (10.24 x 7.87 x 7.87 in). It would fit into 240 x 344 x 240 mm (9.5 x 13.6 x 9.5 in) inside"),
        arguments(
            "position: [0 mm, 70 mm, 90 mm], thin",
            "stand-off: 3 mm, position: [0 mm, 70 mm, 90 mm], thin",
            "s.yaml:23:34: packings[0].warmers[1].stand-off (panels): has no effect for a warmer that lies loose"),
        arguments(
            "thin: width",
            "thin: depth",
            "s.yaml:23:72: packings[0].warmers[1].thin (panels): unknown name 'depth', allowed are height, length, width"),
        arguments(
            "- 10 hour warmer on front",
            "- heat pack",
            "s.yaml:24:9: packings[0].warmers[2] (panels): must say where the warmer is, write for example 40 hour warmer on lid, or give its position; the hours on its wrapper tell which one to take"),
        arguments(
            "- 10 hour warmer on front",
            "- heat pack on front",
            "s.yaml:24:9: packings[0].warmers[2] (panels): is not in the catalogue. The hours on its wrapper tell which one to take, write for example 40 hour warmer; known are 10 hour warmer, 20 hour warmer, 40 hour warmer, 60 hour warmer, 72 hour warmer"),
        arguments(
            "- 10 hour warmer on front",
            "- 11 hour warmer on front",
            "s.yaml:24:9: packings[0].warmers[2] (panels): warmer: there is no \"11 hour warmer\". Known: 10 hour warmer, 20 hour warmer, 40 hour warmer, 60 hour warmer, 72 hour warmer."),
        arguments(
            "- 10 hour warmer on front",
            "- 10 hour warmer",
            "s.yaml:24:9: packings[0].warmers[2] (panels): must say where the warmer is, write for example 10 hour warmer on lid, or give its position"),
        arguments(
            "- 10 hour warmer on front",
            "- [10 hour warmer on front]",
            "s.yaml:24:9: packings[0].warmers[2] (panels): must be lines of 'key: value', not a list"),
        arguments(
            "pack: gel pack on floor",
            "pack: gel on floor",
            "s.yaml:27:28: packings[0].packs[0].pack (panels, cold): material: there is no \"gel\". Did you mean \"gel pack\"?"),
        arguments(
            "pack: gel pack on floor",
            "pack: gel pack",
            "s.yaml:27:28: packings[0].packs[0].pack (panels, cold): must say where the pack is, write for example gel pack on lid, or give its position"),
        arguments(
            "pack: gel pack on floor",
            "pack: gel pack on roof",
            "s.yaml:27:28: packings[0].packs[0].pack (panels, cold): unknown name 'roof', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax"),
        arguments(
            "size: 60 x 40 x 10 mm, mass",
            "size: 60 x 40 mm, mass",
            "s.yaml:27:53: packings[0].packs[0].size (panels, cold): '60 x 40 mm' is not three lengths, write for example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        arguments(
            "mass: 24 g",
            "mass: 24",
            "s.yaml:27:76: packings[0].packs[0].mass (panels, cold): '24' has no unit, write for example 24 g or 24 kg"),
        arguments(
            "mass: 24 g",
            "mass: 240 g",
            "s.yaml:27:76: packings[0].packs[0].mass (panels, cold): mass of pack 'gel pack': 240 g must lie between 12.18 g and 26.796 g. A pack of this size, filled with gel pack, weighs 0.02436 kg."),
        arguments(
            "wrap: 0.01 m2 K/W",
            "wrap: bubble film",
            "s.yaml:27:88: packings[0].packs[0].wrap (panels, cold): 'bubble film' is not a thermal resistance, write for example 0.05 m2 K/W"),
        arguments(
            "start: -18 °C, contact",
            "contact",
            "s.yaml:27:9: packings[0].packs[0].start (panels, cold): is missing and must be given, write for example start: -18 °C"),
        arguments(
            "start: -18 °C",
            "start: freezing",
            "s.yaml:27:108: packings[0].packs[0].start (panels, cold): 'freezing' is not a temperature, write for example 20 °C or 68 °F"),
        arguments(
            "start: -18 °C",
            "start: -0.5 °C",
            "s.yaml:27:108: packings[0].packs[0].start (panels, cold): start of pack 'cold': -0.5 °C (31.1 °F) is where 'gel pack' melts; say which part of it is liquid, such as 0 % liquid for one that is frozen through"),
        arguments(
            "start: -18 °C",
            "start: 150 % liquid",
            "s.yaml:27:108: packings[0].packs[0].start (panels, cold): liquid fraction of a pack: 150 % must lie between 0 % and 100 %. 0 is frozen through, 1 all liquid."),
        arguments(
            "start: 25 % liquid",
            "start: 25 % solid",
            "s.yaml:28:86: packings[0].packs[1].start (panels): '25 % solid' is not a temperature, the unit must be one of °C, °F, K"),
        arguments(
            "pack: n-octadecane on left, size: 100 x 50 x 20 mm, stand-off: 2 mm",
            "pack: water on left, size: 100 x 50 x 20 mm",
            "s.yaml:28:62: packings[0].packs[1].start (panels): start of pack 'pack 2': 'water' does not melt; give its temperature"),
        arguments(
            "- name: stacked",
            "- name: panels",
            "s.yaml:30:11: packings[1].name (panels): an earlier packing has the same name, give each its own"),
        arguments(
            "board: double-wall corrugated board 7 mm",
            "board: [double-wall corrugated board 7 mm, EPS 20]",
            "s.yaml:32:48: packings[1].board[1] (stacked): must be a material and a thickness with its unit, write for example EPS 20 19 mm or EPS 20 3/4 in"),
        arguments(
            "on-top-of: bag",
            "on-top-of: box",
            "s.yaml:38:79: packings[1].containers[1].on-top-of (stacked, vial): unknown name 'box', allowed are bag"),
        arguments(
            "on-top-of: bag",
            "on-top-of: vial",
            "s.yaml:38:79: packings[1].containers[1].on-top-of (stacked, vial): unknown name 'vial', allowed are bag"),
        arguments(
            "on-top-of: bag",
            "on-top-of: bag, position: [0 mm, 0 mm, 10 mm]",
            "s.yaml:38:84: packings[1].containers[1].position (stacked, vial): must have two lengths for a stacked container"),
        arguments(
            "along: length",
            "along: depth",
            "s.yaml:38:60: packings[1].containers[1].along (stacked, vial): unknown name 'depth', allowed are height, length, width"),
        arguments(
            "size: 95 x 60 mm, position",
            "size: 95 x 60, position",
            "s.yaml:39:16: packings[1].containers[2].size (stacked): '95 x 60' needs one unit at the end or one for each length, write for example 95 x 60 mm or 95 x 60 in"),
        arguments(
            "position: [70 mm, 70 mm, 0 mm]",
            "position: [0 mm, 0 mm, 0 mm]",
            "s.yaml:30:5: packings[1] (stacked): 'container 3' overlaps 'bag' by 47.5 mm (1.87 in); the cavity is 252.8 x 252.8 x 252.8 mm (9.95 x 9.95 x 9.95 in). No larger box helps: move what does not fit"),
        arguments(
            "water: 250 %",
            "water: -250 %",
            "s.yaml:39:152: packings[1].containers[2].bedding.water (stacked): water in dry paper towel: -2.5 g/g must lie between 0 g/g and 15.5914 g/g. More would not fit between its fibres."),
        arguments(
            "warmer: 72 hour warmer on vial",
            "warmer: 72 hour warmer on bag",
            "s.yaml:30:5: packings[1] (stacked): 'warmer' overlaps 'vial' by 13.0 mm (0.51 in); the cavity is 252.8 x 252.8 x 252.8 mm (9.95 x 9.95 x 9.95 in). No larger box helps: move what does not fit"),
        arguments(
            "opened: 1 h before sealing",
            "opened: 1 h before sealing\n    stand-off: 3 mm",
            "s.yaml:42:5: packings[1].stand-off (stacked): has no effect for a warmer that lies on a container"),
        arguments(
            "opened: 1 h before sealing",
            "warmers: [10 hour warmer on lid]",
            "s.yaml:40:5: packings[1].warmer (stacked): cannot be given together with warmers"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "box: 10 x 8 x 6 in carton\n    board: none",
            "s.yaml:50:10: packings[3].box (carton): is a carton named by its inner size, which needs board; without board leave out 'carton' and give the outer size"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "box: 7 x 7 in carton",
            "s.yaml:50:10: packings[3].box (carton): '7 x 7 in' is not three lengths, write for example 300 x 200 x 150 mm or 12 x 8 x 6 in"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "box: 7 cube carton",
            "s.yaml:50:10: packings[3].box (carton): '7' has no unit, write for example 7 mm or 7 cm"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "box: 0 in cube carton",
            "s.yaml:50:10: packings[3].box (carton): length: 0 in must be above 0"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "box: 7 ft cube carton",
            "s.yaml:50:10: packings[3].box (carton): outer box 2141.6 x 2141.6 x 2141.6 mm (84.31 x 84.31 x 84.31 in) is longer than 2000.0 mm (78.74 in) along X"),
        arguments(
            "box: 10 x 8 x 6 in carton",
            "vent: 2 holes of 5 mm",
            "s.yaml:50:5: packings[3].vent (carton): unknown key. Did you mean 'holes'?"),
        arguments(
            "size: small lidded box",
            "size: tiny lidded box",
            "s.yaml:53:17: packings[3].cup.size (carton): vessel: there is no \"tiny lidded box\". Known: 2 fl oz, 4 fl oz, 8 fl oz, 12 fl oz, 16 fl oz, 24 fl oz, 32 fl oz, 9 dram vial, 16 dram vial, 40 dram vial, small lidded box, large lidded box, small cloth bag, large cloth bag. Or write its inner size, 100 x 60 mm if it is round or 110 x 80 x 60 mm"));
  }

  static Stream<Arguments> ofJourneys() {
    return Stream.of(
        arguments(
            "for: 45 min",
            "for: 45",
            "s.yaml:18:37: journey.legs[0].for (yard): '45' has no unit, write for example 45 h or 45 min"),
        arguments(
            "for: 45 min",
            "for: 45 min, until: 16:00",
            "s.yaml:18:45: journey.legs[0].until (yard): cannot be given together with for"),
        arguments(
            "for: 45 min, ambient",
            "ambient",
            "s.yaml:18:7: journey.legs[0].for (yard): is missing and must be given, write for example for: 8 h"),
        arguments(
            "until: 18:30",
            "until: 25:00",
            "s.yaml:19:39: journey.legs[1].until (ramp): '25:00' is not a time of day, write hours and minutes as in 06:30, 18:00 or 6:30 pm"),
        arguments(
            "until: 18:30",
            "until: half past six",
            "s.yaml:19:39: journey.legs[1].until (ramp): 'half past six' is not a time of day, write hours and minutes as in 06:30, 18:00 or 6:30 pm"),
        arguments(
            "until: 18:30",
            "until: 2014-07-10 15:00",
            "s.yaml:19:39: journey.legs[1].until (ramp): must come after the start of the leg, which is at 2014-07-10 15:45"),
        arguments(
            "until: 2014-07-11 06:00",
            "until: 2015-07-11 06:00",
            "s.yaml:21:40: journey.legs[3].until (hub): must lie between 1 min and 30 d"),
        arguments(
            "for: 6 h, ambient",
            "for: 31 d, ambient",
            "s.yaml:20:39: journey.legs[2].for (road): must lie between 1 min and 30 d"),
        arguments(
            "at: the pass, for",
            "at: the pas, for",
            "s.yaml:20:24: journey.legs[2].at (road): unknown name 'the pas', allowed are origin, destination, the pass. Did you mean 'the pass'?"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: 1 h",
            "s.yaml:11:10: journey.delay: must be how long and in which leg, write for example 12 h in sorting hub"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: 1 h in rod",
            "s.yaml:11:10: journey.delay: there is no leg 'rod'. Did you mean 'road'? The legs are yard, ramp, road, hub, van, porch, hall"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: -1 h in road",
            "s.yaml:11:10: journey.delay: must lie between 0 and 30 d"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: 29 d 20 h in road",
            "s.yaml:8:3: journey: must not be longer than 30 d, with its delays and its hold"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: 40 d in road",
            "s.yaml:11:10: journey.delay: must lie between 0 and 30 d"),
        arguments(
            "delay: [1 h in road, 2 h in porch]",
            "delay: {road: 1 h}",
            "s.yaml:11:10: journey.delay: must be a list: begin each item with '- ', or put it into brackets as in [{key: value}]; it is lines of 'key: value'"),
        arguments(
            "name: hub, at",
            "name: road, at",
            "s.yaml:11:11: journey.delay[0]: is the name of several legs, give each its own name"),
        arguments(
            "delay: 30 min",
            "delay: -30 min",
            "s.yaml:21:100: journey.legs[3].delay (hub): must lie between 0 and 30 d"),
        arguments(
            "sealed: 2014-07-10 15:00",
            "sealed: 15:00",
            "s.yaml:8:11: journey.sealed: '15:00' is not a date with a time, write for example 2026-12-01 15:00 or December 1 2026 3 pm"),
        arguments(
            "sealed: 2014-07-10 15:00",
            "hold: 3 h",
            "s.yaml:8:3: journey.hold: unknown key, allowed are template, sealed, start, from, to, places, lows/highs, delay, without, surface, legs"),
        arguments(
            "  sealed: 2014-07-10 15:00\n",
            "",
            "s.yaml:8:3: journey.sealed: is missing and must be given, write for example sealed: 2014-01-15 18:00"),
        arguments(
            "surface: white",
            "surface: green",
            "s.yaml:10:12: journey.surface: unknown name 'green', allowed are brown board, white, black"),
        arguments(
            "lows/highs: [60",
            "lows/highs: [60 °F, 70 °F, 60",
            "s.yaml:12:16: journey.lows/highs[0]: must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F], not '60 °F'"),
        arguments(
            "lows/highs: [60 to 80 °F, 16 to 27 °C]",
            "lows/highs: 80 to 60 °F",
            "s.yaml:12:15: journey.lows/highs: '80 to 60 °F' must have the lower temperature first, write 60 to 80 °F"),
        arguments(
            "lows/highs: [60 to 80 °F, 16 to 27 °C]",
            "lows/highs: 60 to 80",
            "s.yaml:12:15: journey.lows/highs: '60 to 80' has no unit, write for example 80 °C or 80 °F"),
        arguments(
            "lows/highs: [60 to 80 °F, 16 to 27 °C]",
            "lows/highs: 60 to 80 K",
            "s.yaml:12:15: journey.lows/highs: 80 K is too cold for a daily high, which is at least 200.15 K. Did you mean °F?"),
        arguments(
            "name: Seattle, utc: UTC-7, latitude",
            "utc: UTC-7, latitude",
            "s.yaml:13:9: journey.from.name: is missing and must be given, write for example name: New York"),
        arguments(
            "utc: UTC-7, latitude",
            "utc: PST, latitude",
            "s.yaml:13:30: journey.from.utc: 'PST' is not an offset from UTC, write for example UTC-5 or -05:00; in the United States it is UTC-8"),
        arguments(
            "latitude: 47.6 °, longitude",
            "longitude",
            "s.yaml:13:37: journey.from.longitude: latitude and longitude must be given together"),
        arguments(
            "longitude: -122.3 °, clouds",
            "longitude: 122.3 °, clouds",
            "s.yaml:13:66: journey.from.longitude: does not fit the clock, which is set to UTC-07:00 and would be 9 h from the sun; east is positive: all of the Americas is negative"),
        arguments(
            "latitude: 47.6 °, longitude",
            "latitude: 147.6 °, longitude",
            "s.yaml:13:47: journey.from.latitude: 147.6 ° must lie between -90 ° and 90 °. North is positive."),
        arguments(
            "latitude: 47.6 °, longitude",
            "latitude: 47.6 N, longitude",
            "s.yaml:13:47: journey.from.latitude: '47.6 N' is not an angle, the unit must be one of °"),
        arguments(
            "longitude: -122.3 °, clouds",
            "longitude: -222.3 °, clouds",
            "s.yaml:13:66: journey.from.longitude: -222.3 ° must lie between -180 ° and 180 °. East is positive: all of the Americas is negative."),
        arguments(
            "longitude: -122.3 °, clouds",
            "clouds",
            "s.yaml:13:37: journey.from.latitude: latitude and longitude must be given together"),
        arguments(
            "clouds: 30 %",
            "clouds: 0.3",
            "s.yaml:13:84: journey.from.clouds: '0.3' has no unit, write for example 0.3 %"),
        arguments(
            "clouds: 30 %",
            "clouds: 130 %",
            "s.yaml:13:84: journey.from.clouds: cloud cover: 130 % must lie between 0 % and 100 %. Half a sky of cloud is 0.5."),
        arguments(
            "sky: hazy summer",
            "sky: blue",
            "s.yaml:13:95: journey.from.sky: unknown name 'blue', allowed are clear winter, hazy summer"),
        arguments(
            "spread: 4 K, lows",
            "spread: 4 °C, lows",
            "s.yaml:14:44: journey.to.spread: '4 °C' is not a temperature difference, the unit must be one of K, C°, F°"),
        arguments(
            "spread: 4 K, lows",
            "spread: -4 K, lows",
            "s.yaml:14:44: journey.to.spread: outdoor spread: -4 K must lie between 0 K and 30 K. It is a difference: 9 F° of difference are 5 K."),
        arguments(
            "spread: 4 K, lows",
            "clouds: 10 %, lows",
            "s.yaml:14:36: journey.to.clouds: has no effect without latitude and longitude"),
        arguments(
            "name: the pass, utc",
            "name: origin, utc",
            "s.yaml:16:8: journey.places[0].name: an earlier place has the same name, give each its own"),
        arguments(
            "ambient: outdoors, sun: yes, heading",
            "ambient: outdoors, sun: no, heading",
            "s.yaml:18:73: journey.legs[0].heading (yard): has no effect without sun"),
        arguments(
            "ambient: outdoors, sun: yes, heading",
            "ambient: outdoors, sun: maybe, heading",
            "s.yaml:18:69: journey.legs[0].sun (yard): 'maybe' is neither yes nor no"),
        arguments(
            "heading: 180 °",
            "heading: 180",
            "s.yaml:18:83: journey.legs[0].heading (yard): '180' has no unit, write for example 180 °"),
        arguments(
            "heading: 180 °",
            "heading: 500 °",
            "s.yaml:18:83: journey.legs[0].heading (yard): 500 ° must lie between -360 ° and 360 °. North is 0, east 90."),
        arguments(
            "wind: 2 m/s",
            "wind: 2",
            "s.yaml:18:96: journey.legs[0].wind (yard): '2' has no unit, write for example 2 m/s or 2 km/h"),
        arguments(
            "wind: 2 m/s",
            "wind: 20 m/s",
            "s.yaml:18:96: journey.legs[0].wind (yard): air speed: 20 m/s must lie between 0 m/s and 10 m/s. Speeds are those next to the parcel, in metres per second: 10 mph are 4.5 m/s."),
        arguments(
            "ambient: airport ramp",
            "ambient: airport rampp",
            "s.yaml:19:55: journey.legs[1].ambient (ramp): there is no \"airport rampp\". Did you mean \"airport ramp\"? Or write a temperature such as 12 °C, or a daily low and high such as -2 to 6 °C"),
        arguments(
            "ambient: airport ramp",
            "ambient: beach",
            "s.yaml:19:55: journey.legs[1].ambient (ramp): there is no \"beach\". None of the 14 known names is like it. Or write a temperature such as 12 °C, or a daily low and high such as -2 to 6 °C"),
        arguments(
            "ambient: 'outdoors + 3 K, lag 2 h'",
            "ambient: 'outdoors + 3 °C, lag 2 h'",
            "s.yaml:20:53: journey.legs[2].ambient (road): '3 °C' is not a temperature difference, the unit must be one of K, C°, F°"),
        arguments(
            "ambient: 'outdoors + 3 K, lag 2 h'",
            "ambient: 'outdoors + 3 K, lag 2'",
            "s.yaml:20:53: journey.legs[2].ambient (road): '2' has no unit, write for example 2 h or 2 min"),
        arguments(
            "ambient: 'outdoors + 3 K, lag 2 h'",
            "ambient: 'outdoors + 90 K, lag 2 h'",
            "s.yaml:20:53: journey.legs[2].ambient (road): offset of the ambient temperature: 90 K must lie between -60 K and 60 K. It is a difference: 10 °F of difference are 5.6 K."),
        arguments(
            "ambient: 'outdoors + 3 K, lag 2 h'",
            "ambient: 'outdoors + 3 K, lag 9 d'",
            "s.yaml:20:53: journey.legs[2].ambient (road): lag of the ambient temperature: 9 d must lie between 0 d and 7 d"),
        arguments(
            "ambient: 'outdoors + 3 K, lag 2 h'",
            "ambient: 'outdoors, late by 2 h'",
            "s.yaml:20:53: journey.legs[2].ambient (road): there is no \"outdoors, late by 2 h\". Closest of the 14 known: outdoors. Or write a temperature such as 12 °C, or a daily low and high such as -2 to 6 °C"),
        arguments(
            "orientation: left up",
            "orientation: upside down",
            "s.yaml:20:93: journey.legs[2].orientation (road): unknown name 'upside down', allowed are lid up, lid down, left up, right up, front up, back up"),
        arguments(
            "altitude: 8000 ft",
            "altitude: 8000",
            "s.yaml:20:112: journey.legs[2].altitude (road): '8000' has no unit, write for example 8000 mm or 8000 cm"),
        arguments(
            "altitude: 8000 ft",
            "altitude: 80000 ft",
            "s.yaml:20:112: journey.legs[2].altitude (road): 80000 ft must lie between -1640.42 ft and 18044.6 ft. Cabins and holds of aircraft are kept at 2400 m or less: 8000 ft are 2438 m."),
        arguments(
            "spread: 4 K, delay",
            "spread: 4, delay",
            "s.yaml:21:88: journey.legs[3].spread (hub): '4' has no unit, write for example 4 K or 4 C°"),
        arguments(
            "[05:00 18 °C, 11:00",
            "[05:00 18, 11:00",
            "s.yaml:25:17: journey.legs[4].ambient[0] (van): '18' has no unit, write for example 18 °C or 18 °F"),
        arguments(
            "[05:00 18 °C, 11:00",
            "[5 o'clock 18 °C, 11:00",
            "s.yaml:25:17: journey.legs[4].ambient[0] (van): must be a clock time and a temperature, write for example 18:00 12 °C"),
        arguments(
            "[05:00 18 °C, 11:00",
            "[2014-07-11 13:00 18 °C, 11:00",
            "s.yaml:25:17: journey.legs[4].ambient[0] (van): must not come after the start of the leg, which is at 2014-07-11 08:30"),
        arguments(
            "[05:00 18 °C, 11:00 27 °C, 2014-07-11 14:00 30 °C]",
            "[2014-07-11 10:00 18 °C, 2014-07-11 05:00 30 °C]",
            "s.yaml:25:17: journey.legs[4].ambient[0] (van): must not come after the start of the leg, which is at 2014-07-11 08:30"),
        arguments(
            "[05:00 18 °C, 11:00",
            "[05:00 518 °C, 11:00",
            "s.yaml:25:17: journey.legs[4].ambient[0] (van): 518 °C is too hot for the air of a leg, which is at most 60 °C"),
        arguments(
            "[05:00 18 °C, 11:00 27 °C, 2014-07-11 14:00 30 °C]",
            "[]",
            "s.yaml:25:16: journey.legs[4].ambient (van): must not be an empty list, write an item or leave the key out"),
        arguments(
            "face: left, neighbour",
            "face: lft, neighbour",
            "s.yaml:27:18: journey.legs[4].touches[0].face (van): unknown name 'lft', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax. Did you mean 'left'?"),
        arguments(
            "neighbour: 30 °C",
            "neighbour: 30",
            "s.yaml:27:35: journey.legs[4].touches[0].neighbour (van): '30' has no unit, write for example 30 °C or 30 °F"),
        arguments(
            "neighbour: 30 °C",
            "neighbour: 300 °C",
            "s.yaml:27:35: journey.legs[4].touches[0].neighbour (van): ambient temperature: 300 °C must lie between -73.15 °C and 76.85 °C"),
        arguments(
            "neighbour: 30 °C, along",
            "along",
            "s.yaml:27:11: journey.legs[4].touches[0].neighbour (van): is missing and must be given, write for example neighbour: 21 °C"),
        arguments(
            "along: 0 % to 50 %",
            "along: 0 to 50 %",
            "s.yaml:27:49: journey.legs[4].touches[0].along (van): '0' has no unit, write for example 0 %"),
        arguments(
            "along: 0 % to 50 %",
            "along: 50 % to 0 %",
            "s.yaml:27:49: journey.legs[4].touches[0].along (van): the smaller end must come first"),
        arguments(
            "along: 0 % to 50 %",
            "along: 0 % to 150 %",
            "s.yaml:27:11: journey.legs[4].touches[0] (van): contact on the left: 1.5 must lie between 0 and 1. The whole face is 0 to 1."),
        arguments(
            "along: 0 % to 50 %",
            "along: half",
            "s.yaml:27:49: journey.legs[4].touches[0].along (van): must be a part of the face, write for example 0 % to 50 %"),
        arguments(
            "resistance: 0.1 m2 K/W",
            "resistance: 0 m2 K/W",
            "s.yaml:27:97: journey.legs[4].touches[0].resistance (van): resistance to a neighbour: 0 m2 K/W must be a finite number above 0"),
        arguments(
            "neighbour: packed alike",
            "neighbour: packed alike, resistance: 0.1 m2 K/W",
            "s.yaml:28:49: journey.legs[4].touches[1].resistance (van): has no effect for a neighbour packed alike"),
        arguments(
            "resting: wire shelf",
            "resting: grass",
            "s.yaml:29:79: journey.legs[5].resting (porch): 'grass' is not a thermal resistance, write for example 0.05 m2 K/W"),
        arguments(
            "resting: 0.2 m2 K/W",
            "resting: -0.2 m2 K/W",
            "s.yaml:30:72: journey.legs[6].resting (hall): resistance below a resting parcel: -0.2 m2 K/W must be a finite number above 0"),
        arguments(
            "sun: no}",
            "sun: no, heading: 90 °}",
            "s.yaml:29:100: journey.legs[5].heading (porch): has no effect without sun"),
        arguments(
            "from: {name: Seattle, utc",
            "from: {city: Seattle, utc",
            "s.yaml:13:10: journey.from.city: unknown key, allowed are name, utc, lows/highs, spread, latitude, longitude, clouds, sky"));
  }

  static Stream<Arguments> ofTheShortForm() {
    return Stream.of(
        arguments(
            "units: us",
            "units: US",
            "s.yaml:3:8: units: unknown name 'US', allowed are metric, us, imperial. Did you mean 'us'?"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "overnight by air",
            "s.yaml:6:10: journey: must be a template and a daily low and high, write for example \"overnight by air, 28 to 45 °F\", or write the journey out"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "overnite by air, 28 to 45 °F",
            "s.yaml:6:10: journey: journey template: there is no \"overnite by air\". Did you mean \"overnight by air\"?"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "overnight by air, 28 °F",
            "s.yaml:6:10: journey: must be two temperatures, write 28 to 45 °F or [28 °F, 45 °F], not '28 °F'"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "overnight by air, 45 to 28 °F",
            "s.yaml:6:10: journey: '45 to 28 °F' must have the lower temperature first, write 28 to 45 °F"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air}",
            "s.yaml:6:10: journey: needs lows/highs, such as 28 to 45 °F, or a place with recorded weather as from"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air, lows/highs: 28 to 45 °F, legs: [{name: a, at: origin, for: 1 h, ambient: van}]}",
            "s.yaml:6:11: journey.template: cannot be given together with legs"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{lows/highs: 28 to 45 °F}",
            "s.yaml:6:10: journey: must have legs, or a template such as template: overnight by air"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air, lows/highs: 28 to 45 °F, from: Boston}",
            "s.yaml:6:70: journey.from: must be a place and its offset from UTC, write for example \"New York, UTC-5\""),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air, lows/highs: 28 to 45 °F, start: 500 °C}",
            "s.yaml:6:71: journey.start: 500 °C is too hot for a parcel with an animal, which is at most 50 °C"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air, lows/highs: 28 to 45 °F, delay: 3 h in the hub}",
            "s.yaml:6:71: journey.delay: there is no leg 'the hub'. Did you mean 'flight to the hub' or 'sorting hub'? The legs are waiting for collection, collection van, depot at the origin, loading beside the aircraft, flight to the hub, sorting hub, flight to the destination, unloading beside the aircraft, depot at the destination, delivery van, porch"),
        arguments(
            "overnight by air, 28 to 45 °F",
            "{template: overnight by air, lows/highs: 28 to 45 °F, delay: 3 h in sorting hubb}",
            "s.yaml:6:71: journey.delay: there is no leg 'sorting hubb'. Did you mean 'sorting hub'? The legs are waiting for collection, collection van, depot at the origin, loading beside the aircraft, flight to the hub, sorting hub, flight to the destination, unloading beside the aircraft, depot at the destination, delivery van, porch"),
        arguments(
            "animal: mourning gecko, 3 g\n",
            "",
            "s.yaml:4:6: cup.animal: is missing and must be given, write for example animal: \"leopard gecko, 40 g\""),
        arguments(
            "animal: mourning gecko, 3 g",
            "animal: mourning gecko 3",
            "s.yaml:4:9: animal: must be an animal and its mass with its unit, write for example \"leopard gecko, 40 g\""),
        arguments(
            "foam: EPS 20 0.75 in",
            "foam: EPS 20, 0.75 in",
            "s.yaml:8:69: packings[0].0.75 in: is taken for a key, because inside { } a comma ends a value; write its key before it, leave the comma before it out or put the whole value in quotes"),
        arguments(
            "foam: EPS 20 0.75 in",
            "foam: EPS 20 19,5 mm",
            "s.yaml:8:64: packings[0]: '19,5 mm' has a decimal comma, which ends a value inside { }; write a point, as in 19.5 mm"),
        arguments(
            "cup: 8 fl oz cup\n",
            "",
            "s.yaml:1:1: cup: is missing and must be given, write for example cup: 16 fl oz"),
        arguments(
            "fill: shredded paper",
            "fill: shredded paper, cup: 8 fl oz",
            "s.yaml:5:1: cup: has no effect, as every packing has its own"),
        arguments(
            "cup: 8 fl oz cup",
            "cup: 9 fl oz jar",
            "s.yaml:5:6: cup: vessel: there is no \"9 fl oz jar\". Known: 2 fl oz, 4 fl oz, 8 fl oz, 12 fl oz, 16 fl oz, 24 fl oz, 32 fl oz, 9 dram vial, 16 dram vial, 40 dram vial, small lidded box, large lidded box, small cloth bag, large cloth bag. Or write its inner size, 100 x 60 mm if it is round or 110 x 80 x 60 mm"),
        arguments(
            "cup: 8 fl oz cup",
            "cup: 8 fl oz cup\ncontainers: [8 fl oz]",
            "s.yaml:6:1: containers: cannot be given together with cup"),
        arguments(
            "cup: 8 fl oz cup",
            "containers: [{size: 8 fl oz, animal: none}]",
            "s.yaml:5:13: containers: must have an animal in at least one container"),
        arguments(
            "cup: 8 fl oz cup",
            "cup: {size: 8 fl oz, animal: none}",
            "s.yaml:5:6: cup: must have an animal in at least one container"),
        arguments(
            "box: 8 x 8 x 7 in carton",
            "box: 8 x 8 x 7",
            "s.yaml:8:27: packings[0].box (foam box): '8 x 8 x 7' needs one unit at the end or one for each length, write for example 8 x 8 x 7 mm or 8 x 8 x 7 in"),
        arguments(
            "box: 8 x 8 x 7 in carton",
            "box: 8 x 8 x 2 in",
            "s.yaml:8:5: packings[0] (foam box): 'cup' sticks out of the cavity at the lid by 28.7 mm (1.13 in); the cavity is 157.1 x 157.1 x 4.7 mm (6.19 x 6.19 x 0.19 in). It would fit into 95 x 95 x 34 mm (3.8 x 3.8 x 1.4 in) inside, such as a carton of 8 x 6 x 4 in or 15 x 15 x 15 cm"));
  }

  @ParameterizedTest
  @MethodSource
  void ofPackings(String good, String bad, String message) {
    assertFault(ScenarioFiles.with(ScenarioFiles.PARCEL, good, bad), message);
  }

  @ParameterizedTest
  @MethodSource
  void ofJourneys(String good, String bad, String message) {
    assertFault(ScenarioFiles.with(ScenarioFiles.JOURNEY, good, bad), message);
  }

  @ParameterizedTest
  @MethodSource
  void ofTheShortForm(String good, String bad, String message) {
    assertFault(ScenarioFiles.with(ScenarioFiles.SHORT, good, bad), message);
  }

  private static final String RATING =
      "{on: lid, rating: {peak: 131 °F, hours: 40 h, mean: 48 °C, rise: 45 min}, contents: 100 g, size: 128 x 82 x 12 mm}";

  private static final String CATALOGUED = "40 hour warmer on lid";

  /** Holes, seams, and warmers that the catalogue lacks. */
  static Stream<Arguments> ofOwnWarmers() {
    return Stream.of(
        arguments(
            "2 x 6 mm on lid",
            "6 mm on lid",
            "s.yaml:23:12: packings[1].holes (one): must be how many holes, how wide and on which face, write for example 2 x 6 mm on lid"),
        arguments(
            "2 x 6 mm on lid",
            "0 x 6 mm on lid",
            "s.yaml:23:12: packings[1].holes (one): number of vent holes: 0 must lie between 1 and 1000"),
        arguments(
            "2 x 6 mm on lid",
            "2 x 6 cm on lid",
            "s.yaml:23:12: packings[1].holes (one): diameter of a vent hole: 6 cm must lie between 0.05 cm and 5 cm. A pencil makes a hole of 7 mm."),
        arguments(
            "2 x 6 mm on lid",
            "2 x 6 on lid",
            "s.yaml:23:12: packings[1].holes (one): '6' has no unit, write for example 6 mm or 6 cm"),
        arguments(
            "2 x 6 mm on lid",
            "2 x 6 mm on roof",
            "s.yaml:23:12: packings[1].holes (one): unknown name 'roof', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax"),
        arguments(
            "2 x 5 mm on left",
            "2 x 5 mm on side",
            "s.yaml:12:36: packings[0].holes[1] (two): 'side' does not say which of the four, write left or right (the ends of the box's first length), front or back (the ends of its second)"),
        arguments(
            "seams: loose",
            "seams: lose",
            "s.yaml:24:12: packings[1].seams (one): unknown name 'lose', allowed are taped, closed, loose. Did you mean 'loose'?"),
        arguments(
            "film: half taped over",
            "film: half taped",
            "s.yaml:16:15: packings[0].warmers[0].film (two, printed): unknown name 'half taped', allowed are free, edges taped, half taped over, against a wall, taped over"),
        arguments(
            "{on: lid, rating",
            "{rating",
            "s.yaml:15:17: packings[0].warmers[0].warmer.on (two, printed): is missing and must be given, write for example on: lid"),
        arguments(
            "{on: lid, rating",
            "{on: lit, rating",
            "s.yaml:15:22: packings[0].warmers[0].warmer.on (two, printed): unknown name 'lit', allowed are lid, floor, left, right, front, back, xMin, xMax, yMin, yMax, zMin, zMax. Did you mean 'lid'?"),
        arguments(
            "warmer: {watts",
            "warmer: {on: lid, watts",
            "s.yaml:18:96: packings[0].warmers[1].position (two): cannot be given together with 'on'"),
        arguments(
            "peak: 131 °F",
            "peak: 35 °C",
            "s.yaml:15:35: packings[0].warmers[0].warmer.rating (two, printed): rated peak: 308.15 K must lie between 315 K and 363 K. Most peaks lie between 45 and 70 °C."),
        arguments(
            "contents: 100 g, size",
            "contents: 300 g, size",
            "s.yaml:15:17: packings[0].warmers[0].warmer (two, printed): mass of a warmer: 300.0 g of contents would hold 49.7 g of iron: 30 to 70 % is usual. Check mass, size, hours and peak"),
        arguments(
            "contents: 100 g, size",
            "contents: 20 g, size",
            "s.yaml:15:17: packings[0].warmers[0].warmer (two, printed): mass of a warmer: 20.0 g of contents would hold 47.6 g of iron: 30 to 70 % is usual. Check mass, size, hours and peak"),
        arguments(
            "rating: {peak: 131 °F, hours: 40 h, mean: 48 °C, rise: 45 min}, ",
            "",
            "s.yaml:15:17: packings[0].warmers[0].warmer (two, printed): must have one of the rating printed on it, a curve measured of it, its watts"),
        arguments(
            "hours: 40 h, mean: 48 °C",
            "mean: 48 °C",
            "s.yaml:15:35: packings[0].warmers[0].warmer.rating.hours (two, printed): is missing and must be given, write for example hours: 40 h"),
        arguments(
            "watts: 2 W, lasting: 30 h",
            "watts: 2 W",
            "s.yaml:18:18: packings[0].warmers[1].warmer.lasting (two): is missing and must be given, write for example lasting: 8 h"),
        arguments(
            "watts: 2 W",
            "watts: 2 K",
            "s.yaml:18:26: packings[0].warmers[1].warmer.watts (two): '2 K' is not a power, the unit must be one of W"),
        arguments(
            "watts: 2 W",
            "watts: 0 W",
            "s.yaml:18:26: packings[0].warmers[1].warmer.watts (two): 0 W must be above 0"),
        arguments(
            "rise: 45 min}, ",
            "rise: 45 min}, lasting: 3 h, ",
            "s.yaml:15:91: packings[0].warmers[0].warmer.lasting (two, printed): has no effect without watts, its hours follow from the rest"),
        arguments(
            "position: [0 mm, 45 mm, 80 mm]",
            "position: [0 mm, 60 mm, 100 mm], film: free",
            "s.yaml:18:120: packings[0].warmers[1].film (two): has no effect on a warmer whose watts are given"),
        arguments(
            "film: edges taped",
            "film: none",
            "s.yaml:26:96: packings[2].film (bare): unknown name 'none', allowed are free, edges taped, half taped over, against a wall, taped over"));
  }

  @ParameterizedTest
  @MethodSource
  void ofOwnWarmers(String good, String bad, String message) {
    // the rating takes longest to read, so that it is there for its own faults alone
    boolean isOfTheRating = message.contains("(two, printed)");
    String warmers = ScenarioFiles.OWN_WARMERS;
    String few = isOfTheRating ? warmers : ScenarioFiles.with(warmers, RATING, CATALOGUED);
    assertFault(ScenarioFiles.with(few, good, bad), message);
  }

  static Stream<Arguments> ofMishapsAndForecasts() {
    return Stream.of(
        arguments(
            "weather: 8 K colder}",
            "weather: -8 K}",
            "s.yaml:15:39: mishaps[0].weather (a night of frost): must be how much colder or warmer, write for example 8 K colder, or 8 K colder in van"),
        arguments(
            "weather: 8 K colder}",
            "weather: 8 colder}",
            "s.yaml:15:39: mishaps[0].weather (a night of frost): '8' has no unit, write for example 8 K or 8 C°"),
        arguments(
            "weather: 8 K colder}",
            "weather: -8 K colder}",
            "s.yaml:15:39: mishaps[0].weather (a night of frost): must be above 0 K; colder or warmer says which way"),
        arguments(
            "weather: 8 K colder}",
            "wether: 8 K colder}",
            "s.yaml:15:30: mishaps[0].wether (a night of frost): unknown key, allowed are name, weather, vehicles, delay, orientation, sun, fill, warmer, pack, openings. Did you mean 'weather'?"),
        arguments(
            ", weather: 8 K colder}",
            "}",
            "s.yaml:15:5: mishaps[0] (a night of frost): must say what happens, write for example weather: 8 K colder"),
        arguments(
            "colder in hold",
            "colder in holt",
            "s.yaml:16:34: mishaps[1].weather (a cold hold): there is no leg 'holt'. Did you mean 'hold'? The legs are van, hold"),
        arguments(
            "18 F° colder in hold",
            "300 K colder in hold",
            "s.yaml:16:34: mishaps[1].weather (a cold hold): offset of the ambient temperature: -300 K must lie between -60 K and 60 K. It is a difference: 10 °F of difference are 5.6 K."),
        arguments(
            "1 d in hold]",
            "27 h in hold]",
            "s.yaml:17:39: mishaps[2].delay[1] (lost): must not be longer than the hold of the file, 36 h, all delays together; write a longer hold"),
        arguments(
            "10 h in van",
            "10 h",
            "s.yaml:17:26: mishaps[2].delay[0] (lost): must be how long and in which leg, write for example 12 h in sorting hub"),
        arguments(
            "10 h in van",
            "10 h in the van",
            "s.yaml:17:26: mishaps[2].delay[0] (lost): there is no leg 'the van'. Did you mean 'van'? The legs are van, hold"),
        arguments(
            "10 h in van",
            "-1 h in van",
            "s.yaml:17:26: mishaps[2].delay[0] (lost): delay: -1 h must be above 0"),
        arguments(
            "warmer: dead",
            "warmer: ded",
            "s.yaml:17:61: mishaps[2].warmer (lost): unknown name 'ded', allowed are dead, loose against the cup, film taped over. Did you mean 'dead'?"),
        arguments(
            "3 h in van",
            "7 h in van",
            "s.yaml:18:34: mishaps[3].sun (left in the sun): 7 h in the sun: must lie by day, between 9:00 and 17:00, within the 6 h that the leg lasts as planned; for more, let it last longer"),
        arguments(
            "3 h in van",
            "0 h in van",
            "s.yaml:18:34: mishaps[3].sun (left in the sun): time in the sun: 0 h must be above 0"),
        arguments(
            "sun: 3 h in van",
            "sun: 3 h in van, orientation: left up",
            "s.yaml:18:29: mishaps[3].sun (left in the sun): shines on the lid and cannot be given together with orientation"),
        arguments(
            "orientation: lid down",
            "orientation: on its head",
            "s.yaml:19:38: mishaps[4].orientation (on its head): unknown name 'on its head', allowed are lid up, lid down, left up, right up, front up, back up"),
        arguments(
            "date: 2026-01-16",
            "date: 2026-01-18",
            "s.yaml:22:12: forecast[1].date: must be 2026-01-16: days follow each other without gaps"),
        arguments(
            "date: 2026-01-16",
            "date: 16 January",
            "s.yaml:22:12: forecast[1].date: '16 January' is not a date: the year is missing or out of its place, as in January 15 2026, write for example 2026-12-01 or December 1 2026"),
        arguments(
            "origin: -2 to 6 °C",
            "origin: 6 to -2 °C",
            "s.yaml:22:32: forecast[1].origin: '6 to -2 °C' must have the lower temperature first, write -2 to 6 °C"),
        arguments(
            "origin: -2 to 6 °C",
            "orgin: -2 to 6 °C",
            "s.yaml:22:24: forecast[1].orgin: unknown key, allowed are date, origin, destination. Did you mean 'origin'?"),
        arguments(
            ", destination: 1 to 8 °C",
            "",
            "s.yaml:22:5: forecast[1].destination: is missing and must be given, write for example destination: 28 to 46 °F"));
  }

  @ParameterizedTest
  @MethodSource
  void ofMishapsAndForecasts(String good, String bad, String message) {
    assertFault(ScenarioFiles.with(ScenarioFiles.MISHAPS, good, bad), message);
  }

  private static void assertFault(String text, String message) {
    TextFormatException fault =
        assertThrows(TextFormatException.class, () -> ScenarioReader.read("s.yaml", text));
    assertEquals(message, fault.getMessage());
  }
}
