/* The kernel's Newton steps in C, as the near limit of what this machine can do: the same ramp, mesh, lanes and number
 * of steps, in the same two passes, without a line search. Reads what DumpProblem wrote, checks its solution against the
 * kernel's, and prints microseconds per draw: the median of 9 rounds. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static int nodes, lanes, steps;
static int *parent, *row, *leaf;
static double *per_m, *ea, *hold, *bed, *want, *mid, *width2, *bend, *level;
static double *w, *force, *diag, *share, *own, *step;

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

/* One node in all lanes. Not inlined: the compiler keeps to "restrict" of parameters only, and vectorises with it. */
__attribute__((noinline)) static void eliminate(
    int n, double h, const double *restrict bed_i, const double *restrict w_i, const double *restrict w_p,
    const double *restrict ea_i, const double *restrict hold_i, const double *restrict mid_l,
    const double *restrict width2_l, const double *restrict bend_l, const double *restrict level_l,
    double *restrict force_i, double *restrict diag_i, double *restrict share_i, double *restrict own_i) {
    for (int l = 0; l < n; l++) {
        double x = bed_i[l] + (w_i[l] - w_p[l]) * h - mid_l[l];
        double root = sqrt(x * x + width2_l[l]);
        double tension = ea_i[l] * (x + bend_l[l] * root + level_l[l]);
        double slope = ea_i[l] * h * (1 + bend_l[l] * x / root);
        double inverse = 1 / (diag_i[l] + hold_i[l] + slope);
        double to_parent = slope * inverse;
        double alone = (force_i[l] - tension - hold_i[l] * w_i[l]) * inverse;
        share_i[l] = to_parent;
        own_i[l] = alone;
        force_i[l] = tension + slope * alone;
        diag_i[l] = slope - slope * to_parent;
    }
}

/* Along a chain a node hands its rows on to its parent; where branches meet they are added. */
static void solve(void) {
    memset(w, 0, sizeof(double) * nodes * lanes);
    for (int k = 0; k < steps; k++) {
        for (int i = nodes - 1; i > 0; i--) {
            double *f = force + row[i] * lanes, *d = diag + row[i] * lanes;
            if (leaf[i]) {
                memset(f, 0, sizeof(double) * lanes);
                memset(d, 0, sizeof(double) * lanes);
            }
            size_t at = (size_t)i * lanes;
            eliminate(lanes, per_m[i], bed + at, w + at, w + parent[i] * lanes, ea + at, hold + at, mid, width2, bend, level,
                      f, d, share + at, own + at);
            if (row[parent[i]] != row[i]) {
                double *restrict fp = force + row[parent[i]] * lanes, *restrict dp = diag + row[parent[i]] * lanes;
                for (int l = 0; l < lanes; l++) {
                    fp[l] += f[l];
                    dp[l] += d[l];
                }
            }
        }
        double *f = force + row[0] * lanes, *d = diag + row[0] * lanes;
        for (int l = 0; l < lanes; l++) w[l] += step[l] = (f[l] - hold[l] * w[l]) / (d[l] + hold[l]);
        for (int i = 1; i < nodes; i++) {
            double *restrict ti = step + i * lanes, *restrict wi = w + i * lanes;
            const double *restrict tp = step + parent[i] * lanes, *restrict oi = own + i * lanes, *restrict si = share + i * lanes;
            for (int l = 0; l < lanes; l++) wi[l] += ti[l] = oi[l] + si[l] * tp[l];
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
    width2 = numbers(in, lanes);
    bend = numbers(in, lanes); /* the slope of the slack part, until here */
    level = malloc(sizeof(double) * lanes);
    for (int l = 0; l < lanes; l++) {
        double slack = bend[l];
        width2[l] *= width2[l];
        bend[l] = (1 - slack) / (1 + slack);
        level[l] = mid[l] - bend[l] * sqrt(mid[l] * mid[l] + width2[l]);
        for (int i = 0; i < nodes; i++) ea[(size_t)i * lanes + l] *= 0.5 * (1 + slack);
    }
    row = malloc(sizeof(int) * nodes);
    leaf = malloc(sizeof(int) * nodes);
    for (int i = 0; i < nodes; i++) row[i] = -1;
    for (int i = nodes - 1; i >= 0; i--) {
        leaf[i] = row[i] < 0;
        if (leaf[i]) row[i] = i;
        if (i > 0 && row[parent[i]] < 0) row[parent[i]] = row[i];
    }
    size_t bytes = (all * sizeof(double) + 63) / 64 * 64;
    w = aligned_alloc(64, bytes);
    share = aligned_alloc(64, bytes);
    own = aligned_alloc(64, bytes);
    force = aligned_alloc(64, bytes);
    diag = aligned_alloc(64, bytes);
    step = aligned_alloc(64, bytes);
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
