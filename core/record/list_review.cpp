#include "core/record/list_review.h"

#include <algorithm>
#include <optional>
#include <set>

#include "core/record/reference_choice.h"
#include "core/rules/house_rules.h"
#include "core/unit/conversion.h"
#include "core/words/case_facts.h"
#include "core/words/fact_words.h"
#include "core/words/isolated.h"
#include "core/words/phrasebook.h"
#include "core/words/sentences.h"

namespace wardchalk {

namespace {

/// A child that is asked about, and where a gap begins after it or ends before it.
struct Probe {
  Child child;
  std::string gapFrom;
  std::string gapTo;
};

constexpr int lastMonth = 18 * 12;

/// Each day of the first two months, each month to 18 years.
std::vector<Probe> ageProbes() {
  constexpr int firstDays = 60;
  std::vector<Probe> probes;
  const auto add = [&](int n, Unit unit) {
    Probe probe;
    probe.child.age = Age{{{{Number(n), unit}}}};
    probe.gapFrom = probe.gapTo = enteredWords(Quantity{Number(n), unit});
    probes.push_back(std::move(probe));
  };
  for (int day = 0; day < firstDays; ++day) add(day, Unit::day);
  for (int month = 2; month <= lastMonth; ++month) add(month, Unit::month);
  return probes;
}

/// A weight or a surface to ask about, and the edges at which a gap begins after it or ends before it.
struct SizePlace {
  Number value;
  Number gapFrom;
  Number gapTo;
};

/// The edges, a place between each two, and one before the first and behind the last.
std::vector<SizePlace> around(std::vector<Number> edges) {
  std::sort(edges.begin(), edges.end());
  edges.erase(std::unique(edges.begin(), edges.end()), edges.end());
  std::vector<SizePlace> places = {{edges.front() / Number(2), edges.front(), edges.front()}};
  for (std::size_t i = 0; i < edges.size(); ++i) {
    if (i > 0) places.push_back({(edges[i - 1] + edges[i]) / Number(2), edges[i], edges[i - 1]});
    places.push_back({edges[i], edges[i], edges[i]});
  }
  places.push_back({edges.back() * Number(2), edges.back(), edges.back()});
  return places;
}

template <typename T, typename Take>
void eachEdge(const Band<T>& band, const Take& take) {
  for (const auto& edge : {band.from, band.over, band.below, band.upTo})
    if (edge) take(*edge);
}

std::vector<Probe> sizeProbes(std::vector<Number> edges, Unit unit, void (*put)(Child&, const Quantity&)) {
  std::vector<Probe> probes;
  for (const SizePlace& place : around(std::move(edges))) {
    Probe probe{{}, enteredWords(Quantity{place.gapFrom, unit}), enteredWords(Quantity{place.gapTo, unit})};
    put(probe.child, {place.value, unit});
    probes.push_back(std::move(probe));
  }
  return probes;
}

std::vector<Probe> weightProbes(const ReferenceList& list, const ListGroup& group) {
  std::vector<Number> edges;
  for (const std::size_t entry : group.entries)
    eachEdge(list.entries[entry].reference.weight, [&](const MixedQuantity& edge) {
      if (const auto kg = totalIn(edge, Unit::kg, Pounds::exact)) edges.push_back(*kg);
    });
  return sizeProbes(std::move(edges), Unit::kg,
                    [](Child& child, const Quantity& kg) { child.weight = MixedQuantity{{kg}}; });
}

std::vector<Probe> surfaceProbes(const ReferenceList& list, const ListGroup& group) {
  std::vector<Number> edges;
  for (const std::size_t entry : group.entries)
    eachEdge(list.entries[entry].reference.bsa, [&](const Quantity& edge) { edges.push_back(edge.value); });
  return sizeProbes(std::move(edges), Unit::m2, [](Child& child, const Quantity& m2) { child.bsa = m2; });
}

/// The children to ask about where the entries are told apart by one thing alone; none where more than one
/// thing, or nothing, tells them apart.
std::vector<Probe> probesFor(const ReferenceList& list, const ListGroup& group) {
  bool byAge = false, byWeight = false, bySurface = false;
  for (const std::size_t entry : group.entries) {
    const Reference& reference = list.entries[entry].reference;
    byAge = byAge || reference.age.isStated();
    byWeight = byWeight || reference.weight.isStated();
    bySurface = bySurface || reference.bsa.isStated();
  }
  if (int{byAge} + int{byWeight} + int{bySurface} != 1) return {};
  if (byAge) return ageProbes();
  return byWeight ? weightProbes(list, group) : surfaceProbes(list, group);
}

std::string bandText(const ListEntry& entry) {
  std::string band = bandWords(entry.reference);
  return band.empty() ? say(PhraseId::list_everyChild) : band;
}

/// Walks along the children of a group and notes where no entry holds, or two do.
class Walk {
 public:
  Walk(const ReferenceList& list, const ListGroup& group)
      : list_(list), group_(group), name_(groupName(group.medicine, group.indication, group.route)) {}

  std::vector<std::string> take() {
    for (const Probe& probe : probesFor(list_, group_)) look(probe);
    return std::move(said_);
  }

 private:
  void look(const Probe& probe) {
    std::vector<std::size_t> covering;
    for (const JudgedEntry& judged : bandFor(list_, group_, probe.child, exactRules()).entries)
      if (judged.fit == BandFit::covers) covering.push_back(judged.entry);
    if (covering.size() > 1) noteOverlap(covering[0], covering[1]);
    if (covering.empty()) {
      inGap_ = lastCovered_.has_value();
      return;
    }
    if (inGap_) noteGap(*lastCovered_, probe.gapTo);
    inGap_ = false;
    lastCovered_ = probe.gapFrom;
  }

  void noteGap(const std::string& from, const std::string& to) {
    said_.push_back(from == to ? say(PhraseId::list_gapAt, {{"group", name_}, {"at", from}})
                               : say(PhraseId::list_gap, {{"group", name_}, {"from", from}, {"to", to}}));
  }

  void noteOverlap(std::size_t first, std::size_t second) {
    if (!overlaps_.insert({first, second}).second) return;
    said_.push_back(say(PhraseId::list_overlap, {{"group", name_},
                                                 {"first", bandText(list_.entries[first])},
                                                 {"second", bandText(list_.entries[second])}}));
  }

  const ReferenceList& list_;
  const ListGroup& group_;
  std::string name_;
  std::vector<std::string> said_;
  std::set<std::pair<std::size_t, std::size_t>> overlaps_;
  std::optional<std::string> lastCovered_;
  bool inGap_ = false;
};

}  // namespace

std::string groupName(const std::string& medicine, const std::string& indication, Route route) {
  std::string name = isolated(medicine);
  if (!indication.empty()) name.append(", ").append(isolated(indication));
  return name.append(", ").append(routeText(route));
}

std::vector<std::string> listReview(const ReferenceList& list, const Date& today) {
  std::vector<std::string> said;
  for (const ListGroup& group : find(list, {})) {
    for (std::string& one : Walk(list, group).take()) said.push_back(std::move(one));
    const auto past = std::find_if(group.entries.begin(), group.entries.end(), [&](std::size_t entry) {
      return isPastReview(list.entries[entry], today);
    });
    if (past == group.entries.end()) continue;
    said.push_back(
        say(PhraseId::list_groupPast, {{"group", groupName(group.medicine, group.indication, group.route)},
                                       {"date", textOf(list.entries[*past].reviewBy)}}));
  }
  return said;
}

}  // namespace wardchalk
