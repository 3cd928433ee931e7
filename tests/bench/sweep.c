/*
 * The sweep of shared-model/geometry/shadows/uncovered.ts in plain C, for the benchmark: what a compiler makes of the
 * same algorithm. Reads the shadows of many windows from a file of doubles and prints microseconds of processor time a
 * window (median of the rounds) and the mean share, which has to be that of the product.
 *
 *   cc -O3 -march=native sweep.c -lm -o sweep && ./sweep FILE ROUNDS
 *
 * FILE: number of windows; for each its number n of shadows, n + 1 starts, then u, lo and hi of each column.
 */

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define SAME_HEIGHT 1e-12
#define LEAST_STEP 1e-13
#define MOST 256

typedef struct {
  int count;
  int *starts;
  double *u, *lo, *hi;
} Shadows;

/* Ends at the left and right of the stretch; `low` and `high` take turns as in the product. */
typedef struct {
  double low[2], high[2], lowSlope, highSlope, end;
  int column;
} Record;

static Record records[MOST];
static int order[MOST], waiting[MOST];
static double gapLeft, gapRight, holds;

static void holdUntil(double part) {
  if (part < holds) holds = part;
}

static int decide(double distance0, double distance1) {
  if (distance0 > SAME_HEIGHT) {
    if (distance1 < -SAME_HEIGHT) holdUntil(distance0 / (distance0 - distance1));
    return 1;
  }
  if (distance0 >= -SAME_HEIGHT) return distance1 > 0;
  if (distance1 > SAME_HEIGHT) holdUntil(distance0 / (distance0 - distance1));
  return 0;
}

static void beginStretch(const Shadows *s, int shadow, int at, int side) {
  Record *record = &records[shadow];
  double width = s->u[at + 1] - s->u[at];
  double perWidth = width > LEAST_STEP ? 1 / width : 0;
  record->column = at;
  record->low[side] = s->lo[at];
  record->high[side] = s->hi[at];
  record->lowSlope = (s->lo[at + 1] - s->lo[at]) * perWidth;
  record->highSlope = (s->hi[at + 1] - s->hi[at]) * perWidth;
  record->end = s->u[at + 1];
}

static int nextStretch(const Shadows *s, int shadow, double left, int side) {
  int last = s->starts[shadow + 1] - 1;
  int at = records[shadow].column + 1;
  while (at < last && s->u[at + 1] <= left) at++;
  if (at >= last) return 0;
  beginStretch(s, shadow, at, side);
  return 1;
}

static int passColumns(const Shadows *s, int active, double left, int side) {
  int kept = 0;
  for (int k = 0; k < active; k++) {
    int shadow = order[k];
    if (records[shadow].end <= left && !nextStretch(s, shadow, left, side)) continue;
    order[kept++] = shadow;
  }
  return kept;
}

static void placeRightEnds(int active, double width, int side) {
  double below = -INFINITY;
  for (int k = 0; k < active; k++) {
    int shadow = order[k];
    Record *record = &records[shadow];
    double low = record->low[side];
    double lowRight = low + record->lowSlope * width;
    record->low[1 - side] = lowRight;
    record->high[1 - side] = record->high[side] + record->highSlope * width;
    if (low > below + SAME_HEIGHT) {
      below = low;
      continue;
    }
    int j = k - 1;
    for (; j >= 0; j--) {
      const Record *other = &records[order[j]];
      double above = other->low[side] - low;
      if (above < -SAME_HEIGHT || (above <= SAME_HEIGHT && other->low[1 - side] <= lowRight)) break;
      order[j + 1] = order[j];
    }
    order[j + 1] = shadow;
    below = records[order[k]].low[side];
  }
}

static void sumGaps(int active, int side) {
  double top0 = 0, top1 = 0, floor0 = -INFINITY, floor1 = -INFINITY, gap0 = 0, gap1 = 0;
  int open = 1;
  holds = 1;
  for (int k = 0; k < active; k++) {
    const Record *record = &records[order[k]];
    double low0 = record->low[side], low1 = record->low[1 - side];
    if (low1 < floor1) decide(low0 - floor0, low1 - floor1);
    if (!open) continue;
    double high0 = record->high[side], high1 = record->high[1 - side];
    if (high0 <= top0 && high1 <= top1) continue;
    if ((high0 <= top0 || high1 <= top1) && !decide(high0 - top0, high1 - top1)) continue;
    int overhead = high0 > 1 || high1 > 1;
    if (overhead && decide(low0 - 1, low1 - 1)) continue;
    if (low0 > top0 || low1 > top1) {
      if ((low0 > top0 && low1 > top1) || decide(low0 - top0, low1 - top1)) {
        gap0 += low0 - top0;
        gap1 += low1 - top1;
        floor0 = low0;
        floor1 = low1;
      }
    }
    top0 = high0;
    top1 = high1;
    if (overhead) open = !decide(high0 - 1, high1 - 1);
  }
  gapLeft = open ? gap0 + 1 - top0 : gap0;
  gapRight = open ? gap1 + 1 - top1 : gap1;
}

static void sortByStart(const Shadows *s) {
  for (int i = 0; i < s->count; i++) {
    double start = s->u[s->starts[i]];
    int j = i - 1;
    for (; j >= 0 && s->u[s->starts[waiting[j]]] > start; j--) waiting[j + 1] = waiting[j];
    waiting[j + 1] = i;
  }
}

static double uncoveredShare(const Shadows *s) {
  if (s->count == 0) return 1;
  sortByStart(s);
  double nextStart = s->u[s->starts[waiting[0]]], left = nextStart, area = left;
  int entered = 0, active = 0, side = 0;
  while (left < 1) {
    active = passColumns(s, active, left, side);
    while (nextStart <= left) {
      int shadow = waiting[entered++];
      order[active++] = shadow;
      beginStretch(s, shadow, s->starts[shadow], side);
      nextStart = entered < s->count ? s->u[s->starts[waiting[entered]]] : 2;
    }
    double right = nextStart < 1 ? nextStart : 1;
    for (int k = 0; k < active; k++) {
      if (records[order[k]].end < right) right = records[order[k]].end;
    }
    double width = right - left;
    placeRightEnds(active, width, side);
    sumGaps(active, side);
    area += width * holds * (gapLeft + ((gapRight - gapLeft) * holds) / 2);
    if (holds == 1) {
      left = right;
      side = 1 - side;
      continue;
    }
    double step = fmin(width, fmax(width * holds, LEAST_STEP));
    left = step == width ? right : left + step;
    for (int k = 0; k < active; k++) {
      Record *record = &records[order[k]];
      record->low[side] += record->lowSlope * step;
      record->high[side] += record->highSlope * step;
    }
  }
  return fmax(0, fmin(1, area));
}

static double next(FILE *file) {
  double value;
  if (fread(&value, sizeof value, 1, file) != 1) {
    fprintf(stderr, "the file of shadows ends too early\n");
    exit(1);
  }
  return value;
}

static Shadows readShadows(FILE *file) {
  Shadows s = {.count = (int)next(file)};
  if (s.count > MOST) {
    fprintf(stderr, "more than %d shadows on a window\n", MOST);
    exit(1);
  }
  s.starts = malloc((s.count + 1) * sizeof *s.starts);
  for (int i = 0; i <= s.count; i++) s.starts[i] = (int)next(file);
  int columns = s.starts[s.count];
  s.u = malloc((columns + 1) * sizeof(double));
  s.lo = malloc((columns + 1) * sizeof(double));
  s.hi = malloc((columns + 1) * sizeof(double));
  for (int i = 0; i < columns; i++) {
    s.u[i] = next(file);
    s.lo[i] = next(file);
    s.hi[i] = next(file);
  }
  return s;
}

static double microseconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return now.tv_sec * 1e6 + now.tv_nsec / 1e3;
}

static int ascending(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

int main(int argc, char **argv) {
  FILE *file = argc == 3 ? fopen(argv[1], "rb") : NULL;
  int rounds = argc == 3 ? atoi(argv[2]) : 0;
  if (!file || rounds < 1) {
    fprintf(stderr, "usage: sweep FILE ROUNDS\n");
    return 2;
  }
  int count = (int)next(file);
  Shadows *windows = malloc(count * sizeof *windows);
  for (int i = 0; i < count; i++) windows[i] = readShadows(file);
  double *times = malloc(rounds * sizeof *times), sum = 0;
  for (int round = 0; round < rounds; round++) {
    double begun = microseconds();
    sum = 0;
    for (int i = 0; i < count; i++) sum += uncoveredShare(&windows[i]);
    times[round] = microseconds() - begun;
  }
  qsort(times, rounds, sizeof *times, ascending);
  printf("%.4f %.15g\n", times[rounds / 2] / count, sum / count);
  return 0;
}
