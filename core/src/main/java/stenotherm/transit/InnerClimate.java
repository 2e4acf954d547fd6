package stenotherm.transit;

import java.util.Arrays;
import stenotherm.air.AmbientAir;
import stenotherm.air.BreathingLimits;
import stenotherm.air.Gas;
import stenotherm.air.GasNetwork;
import stenotherm.air.MoistAir;
import stenotherm.air.StandardAtmosphere;
import stenotherm.animal.Metabolism;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.conduction.HeatEngine;
import stenotherm.journey.Leg;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PowderKinetics;

/**
 * What burns, breathes, evaporates and condenses inside a parcel, stepped beside the heat of one
 * run. It gives the engine the powers of warmers, animals, damp bedding, walls and of the air that
 * comes and goes, and takes the temperatures of blocks from it.
 *
 * <p>Over a step it takes the temperatures as going on in a straight line, finds the gases and the
 * conversion of the iron, and from these the powers at the end of the step; the engine then takes
 * the powers as linear in time. So each quantity is found once a step and the error is of second
 * order. What evaporation does to the temperature of a wet body, and air that comes and goes to
 * that of the filling, is found within the step: it may settle sooner than a step lasts. The oxygen
 * that was burnt in a step and the heat that the engine took for it differ by a little; the
 * difference is paid back in the next step, so that the ledgers of heat and gases agree.
 *
 * <p>Belongs to one run.
 */
final class InnerClimate {
  /** Humidity of the air outside [-]: assumed. */
  static final double OUTSIDE_HUMIDITY = 0.6;

  /** Time in which the pressure goes over to that of a new leg [s]: climb and descent, assumed. */
  private static final double PRESSURE_CHANGE = 1200;

  /** Still air over damp surfaces through which vapour diffuses [m]: assumed. */
  private static final double STILL_AIR = 0.01;

  /** Activity of the water in a warmer [-]: assumed, that of a salt solution. */
  private static final double WARMER_ACTIVITY = 0.85;

  /** Up to here metabolism was measured; warmer animals do not go on to burn more [K]. */
  private static final double WARMEST_BODY = 313.15;

  /** First step of a leg, as part of the longest: measured, see the tests of steps. */
  private static final double FIRST_OF_LEG = 1.0 / 15;

  /** Longest step where a heater follows a temperature [s]: as often as a thermostat looks. */
  private static final double CONTROL_STEP = 60;

  /** First step of a warmer that was opened, over its wetting time. */
  private static final double FIRST_OF_WETTING = 0.2;

  /** Most passes in which flow and temperature of the air that leaves come to agree. */
  private static final int FLOW_PASSES = 4;

  /** How nearly they agree: by this part of the flow. */
  private static final double FLOW_CLOSURE = 0.01;

  private final Course course;
  private final ClimatePlan plan;
  private final HeatEngine engine;
  private final GasNetwork gases;
  private final Burner[] burners;

  /**
   * Power of the heaters that follow a temperature and of what melts, constant over a step [W], by
   * input.
   */
  private final double[] controlled;

  /** The same by heater, as its law has it, without the strength of this one. */
  private final double[] commanded;

  /** Enthalpy of each pack that melts as one body [J]. */
  private final double[] enthalpies;

  /** Heat that each of them took from what surrounds it over the last step [W]. */
  private final double[] taken;

  private final double evaporation;
  private final double metabolism;

  /** Where the means of blocks lie among the outputs of the engine, and all outputs. */
  private final int[] means;

  private final double[] read;

  // of one step
  private final double[] released;
  private final double[] uptakes;
  private final double[] breathed;
  private final Metabolism[] resting;

  /** Means of blocks at the last two times, and those expected at the next one [K]. */
  private double[] now;

  private double[] before;
  private final double[] next;
  private double lastStep;

  /** Temperature of the air that leaves at the end of the last step [K]. */
  private double ventilated;

  /** Flow of the air that comes and goes at the end of the last step [m3/s]. */
  private double flow;

  /** Heat that it brings at the start of the last step, at its end, and from then on [W]. */
  private double broughtBefore;

  private double brought;
  private double bringing;

  /** Heat of condensation at the end of the last step, less than 0 if water evaporates [W]. */
  private double[] latent;

  /** The same at its start. */
  private double[] latentBefore;

  /** Powers that the engine takes at the start and at the end of a step [W], by input. */
  private double[] powerAtStart;

  private double[] powerAtEnd;

  /** Heat that was released and that the engine has not taken yet [J], by input. */
  private final double[] owed;

  /** Time over which the engine is given what is owed [s]; shorter than two steps it would ring. */
  private final double repayment;

  private int leg = -1;
  private double legStart;
  private double pressure;
  private double earlierPressure;
  private AirPaths paths;
  private boolean pathsAreNew;

  private double leastOxygen = 1;
  private double mostCarbonDioxide;
  private double breach = Double.POSITIVE_INFINITY;

  /** A warmer as it burns. */
  private static final class Burner {
    final PlacedWarmer warmer;
    final IronPowder powder;
    final double strength;
    final int output;
    final int input;
    final int surface;
    double conversion;

    /** Oxygen that it took in the last step [mol/s]. */
    double uptake;

    Burner(ClimatePlan.Pad pad, Course course) {
      Variation variation = course.variation();
      this.warmer = pad.warmer();
      double slowing =
          PowderKinetics.ACTIVATIONS.at(
                  variation.of(Factor.ACTIVATION_ENERGY), PowderKinetics.ACTIVATION)
              / PowderKinetics.ACTIVATION;
      this.powder =
          pad.powder()
              .reacting(Factor.REACTIONS.at(variation.of(Factor.REACTION), 1))
              .withActivation(slowing * pad.powder().kinetics().activationEnergy());
      this.strength = variation.power(warmer);
      this.output = pad.output();
      this.input = pad.input();
      this.surface = pad.surface();
      this.conversion = course.atSealing().conversions().getOrDefault(warmer.name(), 0.0);
    }

    double age(double time) {
      return time - warmer.opened();
    }

    /** Oxygen that leaves three quarters of the iron that is left: a step takes no more [mol/s]. */
    double most(double duration) {
      return strength * (1 - conversion) / (4 * powder.conversionPerOxygen() * duration);
    }

    IronPowder.Supply at(double pressure, double temperature) {
      return new IronPowder.Supply(warmer.cover().open(), pressure, temperature);
    }

    /** What part of the iron an uptake of oxygen converts in a time [-]. */
    double converts(double uptake, double duration) {
      return uptake * duration * powder.conversionPerOxygen() / strength;
    }

    /** Oxygen taken for its partial pressure [mol/(s Pa)]. */
    double uptake(double time, double pressure, double temperature) {
      return uptake(0, time, pressure, temperature);
    }

    /** The same at the end of a step, by then as much more converted as the last step tells. */
    double uptake(double duration, double time, double pressure, double temperature) {
      double later = Math.min(1, conversion + converts(uptake, duration));
      return strength * powder.uptake(later, age(time), at(pressure, temperature));
    }

    /** Power in air with a mole fraction of oxygen [W]. */
    double power(double time, double pressure, double temperature, double oxygen) {
      return uptake(time, pressure, temperature)
          * (oxygen * pressure)
          * powder.product().heatPerOxygen();
    }
  }

  /**
   * Starts at sealing.
   *
   * @param engine the engine of the run, at its start
   * @param longest longest step that will be taken [s]
   */
  InnerClimate(Course course, HeatEngine engine, double longest) {
    this.repayment = 2 * longest;
    this.course = course;
    this.plan = course.body().climate();
    this.engine = engine;
    this.means = course.body().positionsOfMeans(engine.outputs());
    Variation variation = course.variation();
    this.evaporation = Factor.EVAPORATIONS.at(variation.of(Factor.EVAPORATION), 1);
    this.metabolism = Factor.METABOLISMS.at(variation.of(Factor.METABOLISM), 1);
    this.burners = plan.pads.stream().map(pad -> new Burner(pad, course)).toArray(Burner[]::new);
    int inputs = engine.inputs().size();
    this.read = new double[engine.outputs().size()];
    this.now = new double[means.length];
    this.before = new double[means.length];
    this.next = new double[means.length];
    this.powerAtStart = new double[inputs];
    this.powerAtEnd = new double[inputs];
    this.owed = new double[inputs];
    this.latent = new double[plan.surfaceRooms().length];
    this.latentBefore = new double[latent.length];
    this.released = new double[inputs];
    this.controlled = new double[inputs];
    this.commanded = new double[plan.heaters.size()];
    this.taken = new double[plan.melters.size()];
    this.enthalpies =
        plan.melters.stream().mapToDouble(melter -> melter.body().atSealing()).toArray();
    this.uptakes = new double[burners.length];
    this.breathed = new double[plan.rooms.size()];
    this.resting = new Metabolism[plan.residents.size()];
    this.pressure = course.journey().legs().get(0).surroundings().pressure();
    this.paths = course.airPaths(0);
    enter(0);
    gases =
        new GasNetwork(
            plan.volumes(),
            plan.surfaceRooms(),
            plan.surfaceWater(),
            outside(0),
            course.journey().startTemperature());
    gases.setRespiratoryQuotient(Metabolism.RESPIRATORY_QUOTIENT);
    readMeans();
    System.arraycopy(now, 0, next, 0, now.length);
    findMetabolism();
    findPowers(0);
    control(0);
  }

  private void readMeans() {
    engine.readMeans(read);
    for (int n = 0; n < means.length; n++) {
      now[n] = read[means[n]];
    }
  }

  /** Enters a leg, if it is another one: its openings as the parcel lies there, its pressure. */
  void enter(int number) {
    if (number == leg) {
      return;
    }
    Leg entered = course.journey().legs().get(number);
    earlierPressure = pressure;
    leg = number;
    pressure = entered.surroundings().pressure();
    legStart = course.journey().start(number);
    // the air outside has jumped: nothing goes on as it did
    lastStep = 0;
    paths = course.airPaths(number);
    pathsAreNew = true;
  }

  /** Pressure at a time: it goes over to that of the leg in a while. */
  private double pressure(double time) {
    double part = Math.min(1, (time - legStart) / PRESSURE_CHANGE);
    return earlierPressure + part * (pressure - earlierPressure);
  }

  private AmbientAir outside(double time) {
    // colder air holds no water to speak of, whatever its temperature; in hotter air nothing lives
    double met = Math.max(AmbientAir.TEMPERATURES.low(), course.outside(leg).air(time));
    double temperature = Math.min(AmbientAir.TEMPERATURES.high(), met);
    return new AmbientAir(temperature, pressure(time), OUTSIDE_HUMIDITY);
  }

  /** Adds the powers at the start of the next step to inputs. */
  void addAtStart(double[] inputs) {
    add(powerAtStart, inputs);
    add(controlled, inputs);
  }

  /** Adds the powers at the end of the step that was found last to inputs. */
  void addAtEnd(double[] inputs) {
    add(powerAtEnd, inputs);
    add(controlled, inputs);
  }

  private static void add(double[] powers, double[] inputs) {
    for (int input = 0; input < inputs.length; input++) {
      inputs[input] += powers[input];
    }
  }

  /**
   * Longest step from a time on. After sealing, at the beginning of a leg and when a warmer is
   * opened much changes within minutes: there steps are short, then a third of the time since.
   *
   * @param usual length when nothing has happened lately [s]
   */
  double longestStep(double time, double usual) {
    double step = Math.min(usual, Math.max(FIRST_OF_LEG * usual, (time - legStart) / 3));
    for (Burner burner : burners) {
      double age = burner.age(time);
      double first = FIRST_OF_WETTING * burner.powder.kinetics().wetting();
      step = Math.min(step, age < 0 ? -age : Math.max(first, age / 3));
    }
    for (ClimatePlan.Heater heater : plan.heaters) {
      double age = time - heater.warmer().opened();
      step = Math.min(step, age < 0 ? Math.max(-age, GasNetwork.STEPS.low()) : CONTROL_STEP);
    }
    return step;
  }

  /** Lets the heaters that follow a temperature take their power from now on. */
  private void control(double time) {
    for (int h = 0; h < commanded.length; h++) {
      ClimatePlan.Heater heater = plan.heaters.get(h);
      PlacedWarmer warmer = heater.warmer();
      if (time >= warmer.opened()) {
        commanded[h] =
            Checks.notNegative(
                "power of heater '" + warmer.name() + "'",
                heater.law().power(now[heater.output()], commanded[h]),
                "W");
        controlled[heater.input()] = course.variation().power(warmer) * commanded[h];
      }
    }
  }

  /**
   * Keeps packs that melt as one body at the temperature of their enthalpy. What a pack takes from
   * its surroundings goes on as over the last step; the power in it makes up for what its block,
   * which holds heat as the liquid does, would take for the change of temperature.
   */
  private void melt(double duration) {
    for (int m = 0; m < enthalpies.length; m++) {
      ClimatePlan.Melter melter = plan.melters.get(m);
      double later = enthalpies[m] + duration * taken[m];
      double rise = melter.body().temperature(later, taken[m]) - now[melter.output()];
      controlled[melter.input()] = melter.capacity() * rise / duration - taken[m];
    }
  }

  /** What the packs have taken up in a step: all but what their sources gave. */
  private void takeUp(double duration) {
    for (int m = 0; m < enthalpies.length; m++) {
      ClimatePlan.Melter melter = plan.melters.get(m);
      double risen = melter.capacity() * (now[melter.output()] - before[melter.output()]);
      taken[m] = risen / duration - controlled[melter.input()];
      enthalpies[m] += duration * taken[m];
    }
  }

  /** Finds gases, conversion and powers at the end of a step that the engine takes afterwards. */
  void step(double from, double to) {
    control(from);
    double duration = to - from;
    melt(duration);
    // not farther than the last step went: what settles within seconds does not go on so
    double reach = lastStep > 0 ? Math.min(1, duration / lastStep) : 0;
    for (int y = 0; y < next.length; y++) {
      next[y] = now[y] + reach * (now[y] - before[y]);
    }
    double[] spare = powerAtStart;
    powerAtStart = powerAtEnd;
    powerAtEnd = spare;
    double meanPressure = (pressure(from) + pressure(to)) / 2;
    AmbientAir air = outside(to);
    setPaths(from, air, duration);
    double all = 0;
    double oxygen = gases.fraction(0, Gas.OXYGEN) * meanPressure;
    for (int b = 0; b < uptakes.length; b++) {
      Burner burner = burners[b];
      double first = burner.uptake(from, pressure(from), now[burner.output]);
      double second = burner.uptake(duration, to, pressure(to), next[burner.output]);
      uptakes[b] = Math.min((first + second) / 2, burner.most(duration) / oxygen);
      all += uptakes[b];
    }
    gases.setSink(0, all * meanPressure);
    setWater(duration);
    findMetabolism();
    setResidents();
    gases.step(duration);
    double burnt = gases.oxygenToSink(0);
    for (int b = 0; b < uptakes.length; b++) {
      Burner burner = burners[b];
      burner.uptake = all > 0 ? burnt * uptakes[b] / all : 0;
      burner.conversion = Math.min(1, burner.conversion + burner.converts(burner.uptake, duration));
    }
    findPowers(to);
    pay(air, duration);
  }

  private void setPaths(double from, AmbientAir air, double duration) {
    gases.setOutside(air);
    for (int room = 0; room < plan.rooms.size(); room++) {
      // in the sun beyond any life; what is left of the air there no longer matters
      gases.setTemperature(
          room, Math.min(next[plan.rooms.get(room).output()], AmbientAir.TEMPERATURES.high()));
    }
    if (pathsAreNew) {
      // the air outside has jumped, and with it what it brings
      AmbientAir first = outside(from);
      flow = paths.flow(now[plan.rooms.get(0).output()] - first.temperature());
      bringing = heat(flow * density(first), first, now[plan.rooms.get(0).output()]);
    }
    double flowBefore = flow;
    ventilate(air, duration);
    gases.setFlow(0, (flowBefore + flow) / 2);
    if (pathsAreNew) {
      pathsAreNew = false;
      for (int room = 0; room < plan.rooms.size(); room++) {
        for (Gas gas : Gas.values()) {
          gases.setExchange(room, gas, paths.diffusion(room, gas));
        }
      }
    }
  }

  private void setWater(double duration) {
    for (ClimatePlan.Damp each : plan.damp) {
      setWet(each.wet(), duration);
    }
    for (ClimatePlan.Resident each : plan.residents) {
      setWet(each.wet(), duration);
    }
    for (Burner burner : burners) {
      double temperature = next[burner.output];
      double film =
          burner.strength
              * burner.powder.film().conductance(burner.warmer.cover().open(), pressure)
              * Gas.WATER_VAPOUR.diffusivity(temperature, pressure)
              / Gas.OXYGEN.diffusivity(temperature, pressure);
      gases.setSurface(burner.surface, film, WARMER_ACTIVITY * saturationPressure(temperature));
    }
    ClimatePlan.Wall wall = plan.wall;
    double expected = wallTemperature(next);
    double conductance = vapourConductance(wall.area(), expected);
    setWet(wall.surface(), conductance, wall.body().over(duration), wallTemperature(now), expected);
  }

  private void setWet(ClimatePlan.Wet wet, double duration) {
    double expected = next[wet.output()];
    double conductance = evaporation * vapourConductance(wet.area(), expected);
    setWet(wet.surface(), conductance, wet.body().over(duration), now[wet.output()], expected);
  }

  /**
   * Sets a wet surface. What evaporates cools it, which within a step matters to small bodies: with
   * the vapour pressure p of the temperature expected, the temperature T at the end if nothing
   * evaporated and the cooling r by one watt, evaporation is g (p + p' (T - r L e - T expected) -
   * p_vapour), which is linear in itself. So the gases find it together with the vapour of the
   * room.
   *
   * @param conductance evaporation over the difference of vapour pressures [mol/(s Pa)]
   * @param expected the temperature at the end of the step, carried on from the last [K]
   */
  private void setWet(
      int surface,
      double conductance,
      ClimatePlan.Response response,
      double temperature,
      double expected) {
    double last = latent[surface];
    double dry = response.without(temperature, expected, latentBefore[surface], last, last);
    double latentHeat = MoistAir.latentHeat(expected);
    double saturated = saturationPressure(expected);
    double slope = saturated * latentHeat / (MoistAir.GAS_CONSTANT * expected * expected);
    double back = conductance * slope * latentHeat * response.ofEnd();
    gases.setSurface(
        surface, conductance / (1 + back), Math.max(0, saturated + slope * (dry - expected)));
  }

  /**
   * Saturation pressure as far as it is known: ice below -40 °C has less than 13 Pa, which moves
   * nothing to speak of, and water boils not much above 90 °C.
   */
  private static double saturationPressure(double temperature) {
    Range known = MoistAir.SATURATION_RANGE;
    return MoistAir.saturationPressure(Math.max(known.low(), Math.min(temperature, known.high())));
  }

  private double vapourConductance(double area, double temperature) {
    return Gas.WATER_VAPOUR.diffusivity(temperature, pressure)
        * area
        / (STILL_AIR * MoistAir.GAS_CONSTANT * temperature);
  }

  /**
   * Inner surface of the walls: between the middle of their innermost layers and that of the
   * filling, so that it follows both when the air outside has just changed.
   */
  private double wallTemperature(double[] at) {
    double sum = 0;
    for (int output : plan.wall.outputs()) {
      sum += at[output];
    }
    double middle = sum / plan.wall.outputs().length;
    return middle + plan.wall.inwards() * (at[plan.rooms.get(0).output()] - middle);
  }

  private void setResidents() {
    Arrays.fill(breathed, 0);
    for (int r = 0; r < resting.length; r++) {
      ClimatePlan.Resident each = plan.residents.get(r);
      breathed[each.room()] += each.count() * metabolism * resting[r].oxygen();
    }
    for (int room = 0; room < breathed.length; room++) {
      gases.setUptake(room, breathed[room]);
    }
  }

  /** What animals exchange at the temperatures at the end of a step. */
  private void findMetabolism() {
    for (int r = 0; r < resting.length; r++) {
      ClimatePlan.Resident each = plan.residents.get(r);
      double temperature = Math.min(next[each.output()], WARMEST_BODY);
      resting[r] = Metabolism.resting(each.group(), each.mass(), temperature);
    }
  }

  /** Powers at a time, from gases and conversion now. */
  private void findPowers(double time) {
    Arrays.fill(powerAtEnd, 0);
    double oxygen = gases.fraction(0, Gas.OXYGEN);
    for (Burner burner : burners) {
      powerAtEnd[burner.input] = burner.power(time, pressure(time), next[burner.output], oxygen);
    }
    for (int r = 0; r < resting.length; r++) {
      ClimatePlan.Resident each = plan.residents.get(r);
      // where oxygen is short an animal takes less of it and gives less heat
      double air = gases.fraction(each.room(), Gas.OXYGEN) / GasNetwork.CONFORMING_FRACTION;
      powerAtEnd[each.input()] += metabolism * resting[r].heat() * Math.min(1, air);
    }
  }

  /** Lets the engine take in the end what was released, and adds latent heat and that of air. */
  private void pay(AmbientAir air, double duration) {
    Arrays.fill(released, 0);
    double[] spare = latentBefore;
    latentBefore = latent;
    latent = spare;
    for (Burner burner : burners) {
      released[burner.input] =
          burner.uptake * burner.powder.product().heatPerOxygen()
              + latent(burner.surface, next[burner.output]);
      powerAtEnd[burner.input] += latent[burner.surface];
    }
    for (ClimatePlan.Damp each : plan.damp) {
      released[each.input()] = latent(each.wet());
      powerAtEnd[each.input()] = released[each.input()];
    }
    released[plan.wall.input()] = latent(plan.wall.surface(), wallTemperature(next));
    powerAtEnd[plan.wall.input()] = released[plan.wall.input()];
    plan.ventilation.ifPresent(
        ventilation -> {
          double entering = flow * density(air) + Math.max(0, gases.makeUp(0));
          powerAtStart[ventilation.input()] = bringing;
          broughtBefore = bringing;
          brought = heat(entering, air, ventilated);
          bringing = brought;
          powerAtEnd[ventilation.input()] = brought;
          released[ventilation.input()] = (broughtBefore + brought) / 2;
        });
    for (ClimatePlan.Resident each : plan.residents) {
      powerAtEnd[each.input()] += latent(each.wet());
      released[each.input()] = powerAtEnd[each.input()];
    }
    for (int input = 0; input < owed.length; input++) {
      powerAtEnd[input] += owed[input] / repayment;
      owed[input] += duration * (released[input] - (powerAtStart[input] + powerAtEnd[input]) / 2);
    }
  }

  private double latent(ClimatePlan.Wet wet) {
    return latent(wet.surface(), next[wet.output()]);
  }

  /** Heat of condensation on a surface [W], less than 0 if water evaporates; remembered. */
  private double latent(int surface, double temperature) {
    latent[surface] = -gases.evaporation(surface) * MoistAir.latentHeat(temperature);
    return latent[surface];
  }

  /** Heat of air that enters and leaves again at a temperature [W]. */
  private static double heat(double entering, AmbientAir air, double leaving) {
    return entering * MoistAir.molarHeatCapacity(0) * (air.temperature() - leaving);
  }

  private static double density(AmbientAir air) {
    return air.pressure() / (MoistAir.GAS_CONSTANT * air.temperature());
  }

  /**
   * Finds temperature and flow of the air that leaves at the end of a step. Through wide holes it
   * brings the filling to the temperature outside within minutes, which a straight line does not
   * follow. So the filling is taken as one body of capacity C behind a resistance R, of which the
   * last step tells what acts on it beside the air; what the air brings then changes its
   * temperature linearly, and the temperature at the end is that which both agree on.
   */
  private void ventilate(AmbientAir air, double duration) {
    int output = plan.rooms.get(0).output();
    double outside = air.temperature();
    if (plan.ventilation.isEmpty()) {
      ventilated = next[output];
      flow = paths.flow(ventilated - outside);
      return;
    }
    ClimatePlan.Response response = plan.ventilation.get().body().over(duration);
    double known = response.without(now[output], next[output], broughtBefore, brought, bringing);
    double perFlow = density(air) * MoistAir.molarHeatCapacity(0);
    int passes = 0;
    double last;
    do {
      last = flow;
      double pull = response.ofEnd() * perFlow * flow;
      ventilated = (known + pull * outside) / (1 + pull);
      flow = paths.flow(ventilated - outside);
      passes++;
    } while (passes < FLOW_PASSES && Math.abs(flow - last) >= FLOW_CLOSURE * flow);
  }

  /** Gases, water and their ledgers. */
  GasNetwork gases() {
    return gases;
  }

  /** Heat that was released to an input and that the engine has not taken yet [J]. */
  double owed(int input) {
    return owed[input];
  }

  /** The air that animals breathed so far. */
  Breathing breathing() {
    return new Breathing(leastOxygen, mostCarbonDioxide, breach);
  }

  /** Pressure over that at sea level [-]. */
  private double thinness(double time) {
    return pressure(time) / StandardAtmosphere.SEA_LEVEL_PRESSURE;
  }

  private void breathe(double time) {
    double thin = thinness(time);
    for (ClimatePlan.Resident each : plan.residents) {
      double oxygen = gases.fraction(each.room(), Gas.OXYGEN) * thin;
      double carbonDioxide = gases.fraction(each.room(), Gas.CARBON_DIOXIDE) * thin;
      leastOxygen = Math.min(leastOxygen, oxygen);
      mostCarbonDioxide = Math.max(mostCarbonDioxide, carbonDioxide);
      if (oxygen < BreathingLimits.ECTOTHERMS.oxygenAlarm()
          || carbonDioxide > BreathingLimits.ECTOTHERMS.carbonDioxideAlarm()) {
        breach = Math.min(breach, time);
      }
    }
  }

  /** Reads gases and warmers now. */
  double[] read(double time) {
    double[] row = new double[plan.columns.count()];
    int at = 0;
    for (int room = 0; room < plan.rooms.size(); room++) {
      row[at++] = gases.fraction(room, Gas.OXYGEN);
      row[at++] = gases.fraction(room, Gas.CARBON_DIOXIDE);
      double temperature = now[plan.rooms.get(room).output()];
      row[at++] = gases.vapourPressure(room) / saturationPressure(temperature);
    }
    double oxygen = gases.fraction(0, Gas.OXYGEN);
    double outside = outside(time).fraction(Gas.OXYGEN);
    for (Burner burner : burners) {
      double temperature = now[burner.output];
      IronPowder.Supply there = burner.at(pressure(time), temperature);
      double age = burner.age(time);
      row[at++] = burner.power(time, pressure(time), temperature, oxygen);
      row[at++] = burner.conversion;
      row[at++] =
          burner.powder.limitedBy(burner.conversion, age, there, oxygen / outside).ordinal();
      row[at++] =
          burner.powder.growth(burner.conversion, age, there)
              * (temperature - now[plan.rooms.get(0).output()]);
    }
    for (ClimatePlan.Heater heater : plan.heaters) {
      row[at++] = controlled[heater.input()];
    }
    for (int m = 0; m < enthalpies.length; m++) {
      row[at++] = plan.melters.get(m).body().liquidFraction(enthalpies[m], taken[m]);
    }
    for (ClimatePlan.Resident resident : plan.residents) {
      double left = gases.water(resident.wet().surface()) * Gas.WATER_VAPOUR.molarMass();
      row[at++] = resident.water() - left;
    }
    row[plan.columns.pressure()] = thinness(time);
    return row;
  }

  /**
   * Lets the engine take the powers at the end of the last step for a moment that is too short to
   * step anything.
   */
  void hold(double duration) {
    for (int input = 0; input < owed.length; input++) {
      owed[input] -= duration * powerAtEnd[input];
    }
  }

  /** Takes the temperatures that the engine has reached after a step. */
  void follow(double duration) {
    double[] spare = before;
    before = now;
    now = spare;
    readMeans();
    takeUp(duration);
    lastStep = duration;
    breathe(engine.time());
  }
}
