/* The kernel's Newton steps in C, as the near limit of what this machine can do: the same ramp, mesh, lanes and number
 * of steps, without a line search. Reads what DumpProblem wrote, checks its solution against the kernel's, and prints
 * microseconds per draw: the median of 9 rounds. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static int nodes, lanes, steps;
static int *parent;
static double *per_m, *ea, *hold, *bed, *want, *mid, *width, *slack, *zero;
static double *w, *slope, *force, *diag, *step;

static double now(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec + 1e-9 * t.tv_nsec;
}

static double *numbers(FILE *in, size_t count) {
    double *values = aligned_alloc(64, (count * sizeof(double) + 63) / 64 * 64);
    for (size_t i = 0; i < count; i++)
        if (fscanf(in, "%lf", &values[i]) != 1) exit(2);
    return values;
}

static void solve(void) {
    memset(w, 0, sizeof(double) * nodes * lanes);
    for (int k = 0; k < steps; k++) {
        for (int i = 0; i < nodes; i++)
            for (int l = 0; l < lanes; l++) {
                force[i * lanes + l] = -hold[i * lanes + l] * w[i * lanes + l];
                diag[i * lanes + l] = hold[i * lanes + l];
            }
        for (int i = 1; i < nodes; i++) {
            double *restrict fi = force + i * lanes, *restrict fp = force + parent[i] * lanes;
            double *restrict di = diag + i * lanes, *restrict dp = diag + parent[i] * lanes;
            double *restrict si = slope + i * lanes;
            const double *wi = w + i * lanes, *wp = w + parent[i] * lanes, *ei = ea + i * lanes, *bi = bed + i * lanes;
            double h = per_m[i];
            for (int l = 0; l < lanes; l++) {
                double strain = bi[l] + (wi[l] - wp[l]) * h;
                double x = strain - mid[l], root = sqrt(x * x + width[l] * width[l]), taut = 1 - slack[l];
                double tension = ei[l] * (slack[l] * strain + taut * (0.5 * (x + root) - zero[l]));
                double s = ei[l] * h * (slack[l] + taut * 0.5 * (1 + x / root));
                si[l] = s;
                fi[l] -= tension;
                fp[l] += tension;
                di[l] += s;
                dp[l] += s;
            }
        }
        for (int i = nodes - 1; i > 0; i--) {
            double *restrict fi = force + i * lanes, *restrict fp = force + parent[i] * lanes;
            double *restrict di = diag + i * lanes, *restrict dp = diag + parent[i] * lanes;
            double *restrict si = slope + i * lanes;
            for (int l = 0; l < lanes; l++) {
                double share = si[l] / di[l];
                dp[l] -= si[l] * share;
                fp[l] += share * fi[l];
            }
        }
        for (int l = 0; l < lanes; l++) w[l] += step[l] = force[l] / diag[l];
        for (int i = 1; i < nodes; i++) {
            double *restrict ti = step + i * lanes, *restrict tp = step + parent[i] * lanes;
            double *fi = force + i * lanes, *di = diag + i * lanes, *si = slope + i * lanes, *wi = w + i * lanes;
            for (int l = 0; l < lanes; l++) {
                ti[l] = (fi[l] + si[l] * tp[l]) / di[l];
                wi[l] += ti[l];
            }
        }
    }
}

static int by_value(const void *a, const void *b) {
    double d = *(const double *)a - *(const double *)b;
    return d < 0 ? -1 : d > 0;
}

int main(int argc, char **argv) {
    FILE *in = argc == 2 ? fopen(argv[1], "r") : NULL;
    if (!in || fscanf(in, "%d %d %d", &nodes, &lanes, &steps) != 3) return 2;
    parent = malloc(sizeof(int) * nodes);
    per_m = malloc(sizeof(double) * nodes);
    for (int i = 0; i < nodes; i++) {
        if (fscanf(in, "%d %lf", &parent[i], &per_m[i]) != 2) return 2;
        per_m[i] = 1 / per_m[i];
    }
    size_t all = (size_t)nodes * lanes;
    ea = numbers(in, all);
    hold = numbers(in, all);
    bed = numbers(in, all);
    want = numbers(in, all);
    mid = numbers(in, lanes);
    width = numbers(in, lanes);
    slack = numbers(in, lanes);
    size_t bytes = (all * sizeof(double) + 63) / 64 * 64;
    w = aligned_alloc(64, bytes);
    slope = aligned_alloc(64, bytes);
    force = aligned_alloc(64, bytes);
    diag = aligned_alloc(64, bytes);
    step = aligned_alloc(64, bytes);
    zero = malloc(sizeof(double) * lanes);
    for (int l = 0; l < lanes; l++) zero[l] = 0.5 * (sqrt(mid[l] * mid[l] + width[l] * width[l]) - mid[l]);
    solve();
    double worst = 0;
    for (size_t i = 0; i < all; i++) worst = fmax(worst, fabs(w[i] - want[i]));
    if (!(worst < 1e-8)) {
        fprintf(stderr, "the C kernel differs from the program's by %g m\n", worst);
        return 1;
    }
    double rounds[9];
    for (int r = 0; r < 9; r++) {
        int count = 0;
        double start = now();
        while (now() - start < 0.3) {
            solve();
            count++;
        }
        rounds[r] = (now() - start) / count / lanes * 1e6;
    }
    qsort(rounds, 9, sizeof(double), by_value);
    printf("%.3f\n", rounds[4]);
    return 0;
}
