package stenotherm.air;

/**
 * The equations of a parcel's air with one cup, integrated by the classical Runge-Kutta method in
 * small steps: written anew from the balances, to hold the network against. Temperatures and
 * pressure may change linearly; surfaces never run dry.
 */
final class FineIntegration {
  private static final double R = 8.314462618;

  final double[] size;
  double[][] amount = new double[2][4];
  double[] x = {0.2095, 0, 0, 0};
  double[][] exchange = new double[2][4];
  double[] flow = new double[2];
  double[] sink = new double[2];
  double[] uptake = new double[2];
  double respiratoryQuotient;
  double[] wetConductance = new double[2];
  double[] wetPressure = new double[2];
  double[] temperature = new double[2];
  double[] warming = new double[2];
  double pressure;
  double pressureRate;
  double outsideTemperature;
  private double clock;

  FineIntegration(double parcel, double cup) {
    size = new double[] {parcel, cup};
  }

  private double[][] rates(double time, double[][] n) {
    double p = pressure + time * pressureRate;
    double[][] rate = new double[2][4];
    double[] fromNeighbour = new double[2];
    double ambient = p / (R * outsideTemperature);
    double[] t = new double[2];
    double[] total = new double[2];
    for (int v = 0; v < 2; v++) {
      t[v] = temperature[v] + time * warming[v];
      total[v] = n[v][0] + n[v][1] + n[v][2] + n[v][3];
    }
    // the cup first, for the parcel feeds it
    for (int v = 1; v >= 0; v--) {
      double density = (total[v] / size[v] + (v == 0 ? ambient : total[0] / size[0])) / 2;
      double net = 0;
      double[] mine = new double[4];
      for (int s = 0; s < 4; s++) {
        double here = n[v][s] / total[v];
        double there = v == 0 ? x[s] : n[0][s] / total[0];
        double diffusion = (exchange[v][s] + flow[v]) * density * (there - here);
        mine[s] += diffusion;
        if (v == 1) {
          rate[0][s] -= diffusion;
        }
      }
      mine[0] -= sink[v] * n[v][0] / total[v] + uptake[v];
      mine[2] += respiratoryQuotient * uptake[v];
      mine[3] += wetConductance[v] * (wetPressure[v] - p * n[v][3] / total[v]);
      for (int s = 0; s < 4; s++) {
        rate[v][s] += mine[s];
        net += rate[v][s];
      }
      double growth = total[v] / p * pressureRate - total[v] / t[v] * warming[v];
      fromNeighbour[v] = growth - net;
      for (int s = 0; s < 4; s++) {
        double there = v == 0 ? x[s] : n[0][s] / total[0];
        double carried = fromNeighbour[v] * (fromNeighbour[v] > 0 ? there : n[v][s] / total[v]);
        rate[v][s] += carried;
        if (v == 1) {
          rate[0][s] -= carried;
        }
      }
    }
    return rate;
  }

  private static double[][] moved(double[][] from, double[][] by, double step) {
    double[][] to = new double[2][4];
    for (int v = 0; v < 2; v++) {
      for (int s = 0; s < 4; s++) {
        to[v][s] = from[v][s] + step * by[v][s];
      }
    }
    return to;
  }

  void run(double duration, int steps) {
    double h = duration / steps;
    for (int i = 0; i < steps; i++) {
      double t = clock + i * h;
      double[][] a = rates(t, amount);
      double[][] b = rates(t + h / 2, moved(amount, a, h / 2));
      double[][] c = rates(t + h / 2, moved(amount, b, h / 2));
      double[][] d = rates(t + h, moved(amount, c, h));
      for (int v = 0; v < 2; v++) {
        for (int s = 0; s < 4; s++) {
          amount[v][s] += h / 6 * (a[v][s] + 2 * b[v][s] + 2 * c[v][s] + d[v][s]);
        }
      }
    }
    clock += duration;
  }

  double fraction(int volume, int gas) {
    double[] n = amount[volume];
    return n[gas] / (n[0] + n[1] + n[2] + n[3]);
  }
}
