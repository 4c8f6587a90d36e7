// What forecasts cost: learning a collection and forecasting all of it from cold, one animal after
// one new event, and how both grow. Times are told as ratios to settling which events stand, over
// the same log in the same run.

#include <benchmark/benchmark.h>

#include <chrono>

#include "core/forecast/collection_model.hpp"
#include "core/forecast/forecast.hpp"
#include "tests/core/forecast/invented_collection.hpp"
#include "tests/core/forecast/judge.hpp"

namespace {

using namespace rackside;
using namespace rackside::tests;

const InventedCollection& collection_of(int animals, int years) {
  static std::map<std::pair<int, int>, InventedCollection> made;
  auto& place = made[{animals, years}];
  if (place.animals.empty()) {
    World world;
    world.offer_every = 6;
    world.look_every = 7;
    place = invent(world, animals, 365.0 * years, 2);
  }
  return place;
}

double seconds_to_settle(const InventedCollection& collection) {
  const auto begin = std::chrono::steady_clock::now();
  for (const InventedAnimal& animal : collection.animals)
    benchmark::DoNotOptimize(standing(animal.events));
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

std::vector<Evidence> gather(const InventedCollection& collection) {
  std::vector<Evidence> evidence;
  for (const InventedAnimal& animal : collection.animals)
    if (auto gathered = gather_evidence(animal.events, moment_of(collection.ends).utc))
      evidence.push_back(std::move(*gathered));
  return evidence;
}

void from_cold(benchmark::State& state) {
  const auto& collection =
      collection_of(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
  const Moment now = moment_of(collection.ends);
  const double reference = seconds_to_settle(collection);
  double spent = 0;
  for (auto _ : state) {
    const auto begin = std::chrono::steady_clock::now();
    const auto evidence = gather(collection);
    const CollectionModel model = learn(evidence, collection.ends);
    for (const Evidence& animal : evidence) benchmark::DoNotOptimize(forecast(model, animal, now));
    spent += std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
  }
  std::size_t events = 0;
  for (const InventedAnimal& animal : collection.animals) events += animal.events.size();
  state.counters["events"] = static_cast<double>(events);
  state.counters["to_settling"] = spent / static_cast<double>(state.iterations()) / reference;
}
BENCHMARK(from_cold)
    ->Args({250, 5})
    ->Args({500, 5})
    ->Args({1000, 5})
    ->Args({2000, 5})
    ->Args({1000, 2})
    ->Args({1000, 10})
    ->Unit(benchmark::kMillisecond);

void one_new_event(benchmark::State& state) {
  const auto& collection = collection_of(2000, 5);
  const CollectionModel model = learn(gather(collection), collection.ends);
  const Moment now = moment_of(collection.ends);
  std::size_t next = 0;
  for (auto _ : state) {
    const InventedAnimal& animal = collection.animals[next++ % collection.animals.size()];
    if (const auto evidence = gather_evidence(animal.events, now.utc))
      benchmark::DoNotOptimize(forecast(model, *evidence, now));
  }
}
void one_new_event_with_the_strip(benchmark::State& state) {
  const auto& collection = collection_of(2000, 5);
  const CollectionModel model = learn(gather(collection), collection.ends);
  const Moment now = moment_of(collection.ends);
  std::size_t next = 0;
  for (auto _ : state) {
    const InventedAnimal& animal = collection.animals[next++ % collection.animals.size()];
    if (const auto evidence = gather_evidence(animal.events, now.utc))
      benchmark::DoNotOptimize(forecast_with_density(model, *evidence, now));
  }
}
BENCHMARK(one_new_event_with_the_strip)->Unit(benchmark::kMicrosecond);

BENCHMARK(one_new_event)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
