/* The native twin of kernels/weigh-actions.ts, to see how far the portable one is from the machine: the same loops over the
 * same memory. It reads one weighing (the memory before it, the address of the frame, and the calls), plays it so many
 * times, prints the median milliseconds and the sum of what was kept, by which it is seen to have done the same work. */
#define _GNU_SOURCE
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

typedef float block __attribute__((vector_size(64), aligned(4)));
enum { BLOCK = 16 };
static const float PLAIN = -3e38f, NEVER_DEARER = -1e38f, ONE_BY_ONE = 3e38f;

static uint8_t *memory;
#define WORD(at) (*(int32_t *)(memory + (at)))
#define WORDS(at) ((int32_t *)(memory + (uint32_t)(at)))
#define FIGURES(at) ((float *)(memory + (uint32_t)(at)))

struct frame {
  int32_t columns, rows, nearColumn, nearRow, nearColumns, nearRows, phases;
  uint32_t nearPlaces, cost, back, kept, relief, relieved, returned, here, keptCosts, keptActions;
  int32_t keptCount;
  uint32_t worst, isNear;
  int32_t hasPlanes;
};
struct landing {
  uint32_t rest, slant;
  int32_t hasNear, rowFrom, rowTo;
  uint32_t sum, back, dear, nearSum, nearBack, nearDear, relief, nearRelief;
};
struct slant {
  uint32_t met, before, cells, left, first, outcome, chance;
  int32_t count;
  uint32_t sum, back;
};
struct strike { uint32_t landing; int32_t row, column, phase; uint32_t green; };
struct group { uint32_t first, last; float weight; uint32_t slant; };
struct segment { int32_t row, from, until; };

static struct frame *F;
static inline int clamp(int value, int size) { return value < 0 ? 0 : value >= size ? size - 1 : value; }
static inline int stretches(int stride) { return (stride + BLOCK - 1) / BLOCK; }
static inline float larger(float a, float b) { return a > b ? a : b; }

static void replicateEdges(float *row, int columns) {
  for (int column = 0; column < BLOCK; column++) {
    row[column] = row[BLOCK];
    row[BLOCK + columns + column] = row[BLOCK + columns - 1];
  }
}

static float caughtSum, caughtBack, dearestRelief;
static void catchOf(const struct slant *slant, int number, float dear) {
  const int32_t *firsts = WORDS(slant->first), *outcomes = WORDS(slant->outcome);
  const float *chances = FIGURES(slant->chance);
  const float *cost = FIGURES(F->cost), *back = FIGURES(F->back), *relief = FIGURES(F->relief);
  caughtSum = caughtBack = 0;
  dearestRelief = larger(dear, NEVER_DEARER);
  for (int at = firsts[number]; at < firsts[number + 1]; at++) {
    caughtSum += chances[at] * cost[outcomes[at]];
    caughtBack += chances[at] * back[outcomes[at]];
    dearestRelief = larger(dearestRelief, relief[outcomes[at]]);
  }
}

static inline int metStride(void) { return (F->columns + BLOCK + 31) / 32; }

static inline int slotOf(const struct slant *slant, int row, int column) {
  const int at = row * metStride() + column / 32;
  const uint32_t met = WORDS(slant->met)[at], bit = 1u << (column & 31);
  return met & bit ? WORDS(slant->before)[at] + __builtin_popcount(met & (bit - 1)) + 1 : 0;
}

static inline int isAnyMet(const struct slant *slant, int row, int column) {
  uint32_t met;
  memcpy(&met, memory + slant->met + 4 * row * metStride() + column / 8, 4);
  return (met >> (column & 7) & 0xffff) != 0;
}

static void layNear(struct landing *L) {
  const int columns = F->columns, stride = columns + 2 * BLOCK, dearStride = stretches(stride);
  const int nearStride = F->nearColumns + 2 * BLOCK, nearDearStride = stretches(nearStride);
  const float *cost = FIGURES(F->cost), *back = FIGURES(F->back), *relief = FIGURES(F->relief);
  const int32_t *rest = WORDS(L->rest);
  const struct slant *slant = L->slant ? (struct slant *)(memory + L->slant) : NULL;
  for (int row = 0; row < F->nearRows; row++) {
    const int atRow = F->nearRow + row;
    if (atRow < L->rowFrom || atRow >= L->rowTo) continue;
    const int coarse = atRow * stride + F->nearColumn;
    const float *coarseDear = FIGURES(L->dear) + atRow * dearStride;
    float *dear = FIGURES(L->nearDear) + row * nearDearStride;
    for (int stretch = 0; stretch < nearDearStride; stretch++) {
      const int from = (F->nearColumn + stretch * BLOCK) / BLOCK;
      const int a = from < dearStride ? from : dearStride - 1, b = from + 1 < dearStride ? from + 1 : dearStride - 1;
      dear[stretch] = larger(coarseDear[a], coarseDear[b]);
    }
    for (int phase = 0; phase < F->phases; phase++) {
      const int at = (phase * F->nearRows + row) * nearStride;
      float *sum = FIGURES(L->nearSum) + at, *returned = FIGURES(L->nearBack) + at;
      float *dropped = FIGURES(L->nearRelief) + at;
      const int32_t *places = WORDS(F->nearPlaces) + (phase * F->nearRows + row) * F->nearColumns;
      memcpy(sum, FIGURES(L->sum) + coarse, nearStride * 4);
      memcpy(returned, FIGURES(L->back) + coarse, nearStride * 4);
      memcpy(dropped, FIGURES(L->relief) + coarse, nearStride * 4);
      for (int column = 0; column < F->nearColumns; column++) {
        const int place = places[column];
        const int outcome = rest[place < 0 ? 0 : place];
        float one = cost[outcome], share = 0, dearest = place < 0 ? ONE_BY_ONE : relief[outcome];
        const int stretch = (BLOCK + column) / BLOCK;
        if (dearest != PLAIN) share = back[outcome];
        const int slot = slant ? slotOf(slant, atRow, F->nearColumn + column) : 0;
        if (slot > 0) {
          const float left = FIGURES(slant->left)[slot - 1];
          catchOf(slant, slot - 1, dearest);
          dearest = dearestRelief;
          one = left > 0 ? caughtSum + left * one : caughtSum;
          share = caughtBack + left * share;
        }
        sum[BLOCK + column] = one;
        returned[BLOCK + column] = share;
        dropped[BLOCK + column] = dearest;
        if (dearest != PLAIN) dear[stretch] = larger(dear[stretch], dearest);
      }
    }
  }
}

static void layLanding(struct landing *L, uint32_t buffer) {
  const int columns = F->columns, rows = F->rows, stride = columns + 2 * BLOCK, dearStride = stretches(stride);
  const int nearStride = F->nearColumns + 2 * BLOCK;
  const uint32_t size = rows * stride * 4, nearSize = F->phases * F->nearRows * nearStride * 4;
  L->sum = buffer;
  L->back = L->sum + size;
  L->dear = L->back + size;
  L->nearSum = L->dear + rows * dearStride * 4;
  L->nearBack = L->nearSum + nearSize;
  L->nearDear = L->nearBack + nearSize;
  L->relief = L->nearDear + F->nearRows * stretches(nearStride) * 4;
  L->nearRelief = L->relief + size;
  const float *cost = FIGURES(F->cost), *back = FIGURES(F->back), *relief = FIGURES(F->relief);
  for (int row = L->rowFrom; row < L->rowTo; row++) {
    float *sum = FIGURES(L->sum) + row * stride, *returned = FIGURES(L->back) + row * stride;
    float *dropped = FIGURES(L->relief) + row * stride, *dear = FIGURES(L->dear) + row * dearStride;
    const int32_t *from = WORDS(L->rest) + row * columns;
    const uint8_t *nears = memory + F->isNear + row * columns;
    for (int stretch = 0; stretch < dearStride; stretch++) dear[stretch] = PLAIN;
    for (int begin = 0; begin < columns; begin += BLOCK) {
      const int until = begin + BLOCK < columns ? begin + BLOCK : columns;
      float dearest = PLAIN;
      for (int column = begin; column < until; column++) {
        const float one = nears[column] ? ONE_BY_ONE : relief[from[column]];
        sum[BLOCK + column] = cost[from[column]];
        dropped[BLOCK + column] = one;
        dearest = larger(dearest, one);
      }
      if (dearest == PLAIN) memset(returned + BLOCK + begin, 0, BLOCK * 4);
      else
        for (int column = begin; column < until; column++) returned[BLOCK + column] = back[from[column]];
      dear[begin / BLOCK + 1] = dearest;
    }
  }
  if (L->slant) {
    const struct slant *slant = (struct slant *)(memory + L->slant);
    const int32_t *cells = WORDS(slant->cells);
    for (int number = 0; number < slant->count; number++) {
      const int row = cells[number] / columns, column = cells[number] - row * columns;
      if (row < L->rowFrom || row >= L->rowTo) continue;
      const int at = row * stride + BLOCK + column, stretch = row * dearStride + column / BLOCK + 1;
      float *sum = FIGURES(L->sum) + at, *returned = FIGURES(L->back) + at, *dropped = FIGURES(L->relief) + at;
      catchOf(slant, number, *dropped);
      *dropped = dearestRelief;
      FIGURES(L->dear)[stretch] = larger(FIGURES(L->dear)[stretch], dearestRelief);
      const float left = FIGURES(slant->left)[number];
      *sum = left > 0 ? caughtSum + left * *sum : caughtSum;
      *returned = caughtBack + left * *returned;
    }
  }
  for (int row = L->rowFrom; row < L->rowTo; row++) {
    float *dear = FIGURES(L->dear) + row * dearStride;
    replicateEdges(FIGURES(L->sum) + row * stride, columns);
    replicateEdges(FIGURES(L->back) + row * stride, columns);
    replicateEdges(FIGURES(L->relief) + row * stride, columns);
    dear[0] = dear[1];
    const int last = (columns - 1) / BLOCK + 1;
    for (int stretch = last + 1; stretch < dearStride; stretch++) dear[stretch] = dear[last];
  }
  if (L->hasNear && F->hasPlanes) layNear(L);
}

static float shareBack;
static inline float addOutcome(int outcome, float chance, float here) {
  const float relief = FIGURES(F->relief)[outcome];
  if (relief == PLAIN) return chance * FIGURES(F->cost)[outcome];
  if (relief > 1 + here) {
    shareBack += chance * (FIGURES(F->returned)[outcome] + FIGURES(F->relieved)[outcome]);
    return chance * FIGURES(F->kept)[outcome];
  }
  shareBack += chance * FIGURES(F->back)[outcome];
  return chance * FIGURES(F->cost)[outcome];
}

static void layRise(struct slant *slant) {
  const int32_t *cells = WORDS(slant->cells), *firsts = WORDS(slant->first), *outcomes = WORDS(slant->outcome);
  for (int number = 0; number < slant->count; number++) {
    const int row = cells[number] / F->columns;
    const float here = FIGURES(F->here)[cells[number] + row * BLOCK];
    float sum = 0;
    shareBack = 0;
    for (int at = firsts[number]; at < firsts[number + 1]; at++)
      sum += addOutcome(outcomes[at], FIGURES(slant->chance)[at], here);
    FIGURES(slant->sum)[number] = sum;
    FIGURES(slant->back)[number] = shareBack;
  }
}

static float landOne(const struct landing *L, const struct strike *strike, int column, int row, float here) {
  const int atColumn = clamp(column + strike->column, F->columns), atRow = clamp(row + strike->row, F->rows);
  const int nearColumn = atColumn - F->nearColumn, nearRow = atRow - F->nearRow;
  int outcome;
  if (nearColumn >= 0 && nearRow >= 0 && nearColumn < F->nearColumns && nearRow < F->nearRows) {
    const int place = WORDS(F->nearPlaces)[(strike->phase * F->nearRows + nearRow) * F->nearColumns + nearColumn];
    outcome = place < 0 ? WORDS(strike->green)[-1 - place] : WORDS(L->rest)[place];
  } else
    outcome = WORDS(L->rest)[atRow * F->columns + atColumn];
  shareBack = 0;
  const struct slant *slant = L->slant ? (struct slant *)(memory + L->slant) : NULL;
  const int slot = slant ? slotOf(slant, atRow, atColumn) : 0;
  if (slot == 0) return addOutcome(outcome, 1, here);
  float sum = 0;
  const int32_t *firsts = WORDS(slant->first);
  for (int at = firsts[slot - 1]; at < firsts[slot]; at++)
    sum += addOutcome(WORDS(slant->outcome)[at], FIGURES(slant->chance)[at], here);
  const float left = FIGURES(slant->left)[slot - 1];
  return left > 0 ? sum + addOutcome(outcome, left, here) : sum;
}

static void keep(int row, int column, int action, float cost) {
  const int first = (row * F->columns + column) * F->keptCount;
  float *costs = FIGURES(F->keptCosts);
  int32_t *actions = WORDS(F->keptActions);
  int slot = first + F->keptCount - 1;
  for (; slot > first && costs[slot - 1] > cost; slot--) {
    costs[slot] = costs[slot - 1];
    actions[slot] = actions[slot - 1];
  }
  costs[slot] = cost;
  actions[slot] = action;
  FIGURES(F->worst)[row * (F->columns + BLOCK) + column] = costs[first + F->keptCount - 1];
}

static void weighAction(int action, uint32_t groups, int groupCount, uint32_t segments, int segmentCount) {
  const int columns = F->columns, rows = F->rows, stride = columns + 2 * BLOCK, dearStride = stretches(stride);
  const int stateStride = columns + BLOCK, nearStride = F->nearColumns + 2 * BLOCK;
  const int nearDearStride = stretches(nearStride);
  float lanes[BLOCK], lanesBack[BLOCK], lanesShare[BLOCK];
  for (int number = 0; number < segmentCount; number++) {
    const struct segment *segment = (struct segment *)(memory + segments) + number;
    const int row = segment->row;
    for (int column = segment->from; column < segment->until; column += BLOCK) {
      const int state = row * stateStride + column;
      const int count = segment->until - column < BLOCK ? segment->until - column : BLOCK;
      const float *own = FIGURES(F->here) + state;
      const block ownBlock = *(const block *)own;
      float leastHere = 3.4e38f;
      for (int lane = 0; lane < count; lane++) leastHere = own[lane] < leastHere ? own[lane] : leastHere;
      block s = (block){} + 1, p = {}, g = {}, b = {};
      float weight = 0;
      int isOwn = 0;
      for (int at = 0; at <= groupCount; at++) {
        const struct group *group = (struct group *)(memory + groups) + at;
        const struct slant *slant = at == groupCount || !group->slant ? NULL : (struct slant *)(memory + group->slant);
        int isCaught = 0;
        if (slant) isCaught = isAnyMet(slant, row, column);
        const float next = at == groupCount ? -1 : group->weight;
        if (next != weight || isCaught || isOwn) {
          s += g * weight;
          p += b * weight;
          g = (block){};
          b = (block){};
          weight = next;
          isOwn = isCaught;
        }
        if (at == groupCount) break;
        for (uint32_t k = group->first; k < group->last; k += sizeof(struct strike)) {
          const struct strike *strike = (struct strike *)(memory + k);
          const struct landing *L = (struct landing *)(memory + strike->landing);
          const int atRow = clamp(row + strike->row, rows), raw = column + strike->column;
          const int atColumn = (raw < -BLOCK ? -BLOCK : raw > columns ? columns : raw) + BLOCK;
          const int fromRow = atRow - F->nearRow, fromColumn = atColumn - F->nearColumn;
          const int isNear = F->hasPlanes && (unsigned)fromRow < (unsigned)F->nearRows &&
                             (unsigned)fromColumn < (unsigned)(F->nearColumns + BLOCK);
          const float *sum, *back, *relief, *dears;
          int column16;
          if (isNear) {
            const int offset = (strike->phase * F->nearRows + fromRow) * nearStride + fromColumn;
            sum = FIGURES(L->nearSum) + offset;
            back = FIGURES(L->nearBack) + offset;
            relief = FIGURES(L->nearRelief) + offset;
            dears = FIGURES(L->nearDear) + fromRow * nearDearStride + (fromColumn >> 4);
            column16 = fromColumn & 15;
          } else {
            const int offset = atRow * stride + atColumn;
            sum = FIGURES(L->sum) + offset;
            back = FIGURES(L->back) + offset;
            relief = FIGURES(L->relief) + offset;
            dears = FIGURES(L->dear) + atRow * dearStride + (atColumn >> 4);
            column16 = atColumn & 15;
          }
          const float dear = larger(dears[0], column16 ? dears[1] : PLAIN);
          if (dear > 1 + leastHere) {
            const block reliefs = *(const block *)relief;
            int any = 0;
            for (int lane = 0; lane < count; lane++) any |= (reliefs[lane] > 1 + ownBlock[lane]) << lane;
            if (any) {
              memcpy(lanes, sum, 64);
              memcpy(lanesBack, back, 64);
              for (; any; any &= any - 1) {
                const int lane = __builtin_ctz(any);
                lanes[lane] = landOne(L, strike, column + lane, row, own[lane]);
                lanesBack[lane] = shareBack;
              }
              sum = lanes;
              back = lanesBack;
            }
          }
          g += *(const block *)sum;
          if (dear != PLAIN) b += *(const block *)back;
        }
        if (!isCaught) continue;
        const float strikes = (group->last - group->first) / sizeof(struct strike);
        for (int lane = 0; lane < BLOCK; lane++) {
          const int slot = slotOf(slant, row, column + lane);
          lanesShare[lane] = slot ? FIGURES(slant->left)[slot - 1] : 1;
          lanes[lane] = slot ? strikes * FIGURES(slant->sum)[slot - 1] : 0;
          lanesBack[lane] = slot ? strikes * FIGURES(slant->back)[slot - 1] : 0;
        }
        g = g * *(const block *)lanesShare + *(const block *)lanes;
        b = b * *(const block *)lanesShare + *(const block *)lanesBack;
      }
      float *worst = FIGURES(F->worst) + state;
      for (int lane = 0; lane < count; lane++) {
        const float cost = (s[lane] + p[lane]) / larger(1 - p[lane], 1e-6f);
        if (cost < worst[lane]) keep(row, column + lane, action, cost);
      }
    }
  }
}

static int byTime(const void *a, const void *b) {
  const double d = *(const double *)a - *(const double *)b;
  return d < 0 ? -1 : d > 0;
}

int main(int count, char **arguments) {
  if (count < 3) return fprintf(stderr, "weigh-actions FILE TIMES\n"), 2;
  FILE *file = fopen(arguments[1], "rb");
  int32_t head[4];
  if (!file || fread(head, 4, 4, file) != 4) return fprintf(stderr, "cannot read the weighing\n"), 2;
  const int bytes = head[0], calls = head[2], runs = atoi(arguments[2]);
  uint8_t *before = aligned_alloc(64, (bytes + 127) / 64 * 64);
  int32_t *call = malloc(calls * 28);
  memory = aligned_alloc(64, (bytes + 127) / 64 * 64);
  if (fread(before, 1, bytes, file) != (size_t)bytes || fread(call, 28, calls, file) != (size_t)calls)
    return fprintf(stderr, "the weighing is cut short\n"), 2;
  double times[99], sum = 0;
  for (int run = 0; run < runs && run < 99; run++) {
    memcpy(memory, before, bytes);
    F = (struct frame *)(memory + head[1]);
    struct timespec from, to;
    clock_gettime(CLOCK_MONOTONIC, &from);
    for (int at = 0; at < calls; at++) {
      const int32_t *one = call + 7 * at;
      if (one[0] == 0) layRise((struct slant *)(memory + one[1]));
      else if (one[0] == 1) layLanding((struct landing *)(memory + one[1]), one[2]);
      else weighAction(one[1], one[2], one[3], one[4], one[5]);
    }
    clock_gettime(CLOCK_MONOTONIC, &to);
    times[run] = (to.tv_sec - from.tv_sec) * 1e3 + (to.tv_nsec - from.tv_nsec) / 1e6;
  }
  const float *costs = FIGURES(F->keptCosts);
  for (int at = 0; at < F->columns * F->rows; at++)
    if (isfinite(costs[at * F->keptCount])) sum += costs[at * F->keptCount];
  qsort(times, runs, sizeof *times, byTime);
  printf("{\"median\": %.4f, \"kept\": %.6f}\n", times[runs / 2], sum);
  return 0;
}
