#include "core/check/detail/comparing.h"
#include "core/medicine/medicine_name.h"

namespace wardchalk::detail {

namespace {

/// How one edge of a band is met. `unclear`: the entry is too coarse to say (an age in whole years).
enum class Met : std::uint8_t { yes, no, unclear };

/// The four edges of a band on one scale, with how each is stated. An open end is not itself within.
struct Edges {
  std::optional<Number> from, over, below, upTo;
  bool upToIsOpen = false;
  StatedBand stated;
};

Met met(bool holds) { return holds ? Met::yes : Met::no; }

bool pointInside(const Number& value, const Edges& edges) {
  if (edges.from && value < *edges.from) return false;
  if (edges.over && value <= *edges.over) return false;
  if (edges.below && value >= *edges.below) return false;
  return !edges.upTo || (edges.upToIsOpen ? value < *edges.upTo : value <= *edges.upTo);
}

/// An age of whole years stands for the year from `start`; an edge strictly inside it leaves the answer open,
/// and so does "over" an age at its start (R7).
Met yearInside(const Number& start, const Edges& edges) {
  const Number end = start + *converted(Number(1), Unit::year, Unit::day);
  const auto cuts = [&](const std::optional<Number>& edge) { return edge && *edge > start && *edge < end; };
  Edges certain = edges;
  bool unclear = false;
  for (std::optional<Number>* edge : {&certain.from, &certain.over, &certain.below, &certain.upTo}) {
    if (!cuts(*edge)) continue;
    unclear = true;
    edge->reset();
  }
  if (certain.over && *certain.over == start) {
    unclear = true;
    certain.over.reset();
  }
  if (!pointInside(start, certain)) return Met::no;  // whatever the open edges would say
  return unclear ? Met::unclear : Met::yes;
}

template <typename T, typename ToNumber, typename AsStated>
Edges edgesOf(const Band<T>& band, ToNumber toNumber, AsStated asStated) {
  Edges edges;
  const auto add = [&](BandEdge::Kind kind, const std::optional<T>& edge, std::optional<Number>& into) {
    if (!edge) return;
    into = toNumber(*edge);
    edges.stated.edges.push_back({kind, asStated(*edge)});
  };
  add(BandEdge::Kind::from, band.from, edges.from);
  add(BandEdge::Kind::over, band.over, edges.over);
  add(BandEdge::Kind::below, band.below, edges.below);
  add(BandEdge::Kind::upTo, band.upTo, edges.upTo);
  return edges;
}

struct BandCheck {
  CheckId id;
  FindingCode outside;
  StaticText path;
};

void judge(Comparing& comparing, const BandCheck& band, Stated value, const Edges& edges, Met result) {
  if (result == Met::unclear) {
    comparing.notes.need(band.path, Need::For::verdict, /*finer=*/true);
    return comparing.notChecked(band.id, WhyNot::missing);
  }
  const bool holds = result == Met::yes;
  comparing.check(band.id).value = value;
  comparing.check(band.id).limit = edges.stated;
  if (!holds)
    comparing.notes.tell(band.outside, band.path, {{"child", value}, {"band", edges.stated}}, band.id);
  compare(comparing, band.id, {{Number(1), {}, Origin::field(band.path)}, std::nullopt, std::move(value)},
          Relation::inside, {{}, std::nullopt, edges.stated}, holds);
}

void compareAge(Comparing& comparing) {
  const BandCheck check{CheckId::ageBand, FindingCode::notCoveredAge, path::age};
  const Band<Age>& band = comparing.given.reference.age;
  if (!band.isStated()) return comparing.notChecked(check.id, WhyNot::noBand);
  if (!comparing.given.child.age) {
    comparing.notes.need(path::age, Need::For::verdict);
    return comparing.notChecked(check.id, WhyNot::noAge);
  }
  Edges edges = edgesOf(
      band, [](const Age& age) { return age.days(); }, [](const Age& age) { return age.written; });
  if (band.upTo) {
    edges.upTo = band.upTo->endDays();
    edges.upToIsOpen = band.upTo->endIsOpen();
  }
  const Age& age = *comparing.given.child.age;
  const Met result =
      age.isInWholeYears() ? yearInside(age.days(), edges) : met(pointInside(age.days(), edges));
  judge(comparing, check, age.written, edges, result);
}

void compareWeight(Comparing& comparing) {
  const BandCheck check{CheckId::weightBand, FindingCode::notCoveredWeight, path::weight};
  const Band<MixedQuantity>& band = comparing.given.reference.weight;
  if (!band.isStated()) return comparing.notChecked(check.id, WhyNot::noBand);
  if (!comparing.size.kg) {
    comparing.notes.need(path::weight, Need::For::verdict);
    return comparing.notChecked(check.id, WhyNot::noSize);
  }
  comparing.notes.weightUsed = true;
  const Pounds pounds = comparing.rules.pounds;
  const auto toKg = [pounds](const MixedQuantity& mixed) {
    Number kg;
    for (const Quantity& part : mixed.parts) kg = kg + *converted(part.value, part.unit, Unit::kg, pounds);
    return kg;
  };
  const Edges edges = edgesOf(band, toKg, [](const MixedQuantity& mixed) { return mixed; });
  const Quantity& weight = comparing.size.kg->amount;
  judge(comparing, check, weight, edges, met(pointInside(weight.value, edges)));
}

void compareSurface(Comparing& comparing) {
  const BandCheck check{CheckId::bsaBand, FindingCode::notCoveredBsa, path::bsa};
  const Band<Quantity>& band = comparing.given.reference.bsa;
  if (!band.isStated()) return comparing.notChecked(check.id, WhyNot::noBand);
  Chain needed;
  if (!addSizeFactor(comparing.notes, comparing.size, needed, PerSize::m2))
    return comparing.notChecked(check.id, WhyNot::noSize);
  const Edges edges = edgesOf(
      band, [](const Quantity& area) { return area.value; },
      [](const Quantity& area) { return MixedQuantity{{area}}; });
  const Quantity& m2 = comparing.size.m2->amount;
  const int decimals = comparing.size.surface->fixedDecimals;
  Stated surface = MixedQuantity{{m2}};  // as every size of the child is written
  if (decimals >= 0) surface = FixedQuantity{m2, decimals};
  judge(comparing, check, std::move(surface), edges, met(pointInside(m2.value, edges)));
}

void compareMedicine(Comparing& comparing) {
  const std::string& ordered = comparing.given.order.medicine;
  const Reference& reference = comparing.given.reference;
  const std::string_view stated = medicineOf(reference);
  if (!namesMedicine(stated)) return comparing.notChecked(CheckId::medicine, WhyNot::notStated);
  if (!namesMedicine(ordered)) {
    comparing.notes.need(path::medicine, Need::For::verdict);
    return comparing.notChecked(CheckId::medicine, WhyNot::missing);
  }
  const bool same = isFor(reference, ordered);
  const bool byOtherName = same && !isSameMedicine(reference.medicine, ordered);
  const StatedName name{ordered};
  const StatedName referenceName{std::string(stated)};
  comparing.check(CheckId::medicine).value = name;
  comparing.check(CheckId::medicine).limit = referenceName;
  compare(comparing, CheckId::medicine, {{Number(1), {}, Origin::field(path::medicine)}, std::nullopt, name},
          Relation::same,
          {{Number(1), {}, Origin::field(byOtherName ? path::alsoCalled : path::referenceMedicine)},
           std::nullopt,
           referenceName},
          same);
  if (!same)
    comparing.notes.tell(FindingCode::notCoveredMedicine, path::medicine,
                         {{"ordered", name}, {"reference", referenceName}}, CheckId::medicine);
}

void compareRoute(Comparing& comparing) {
  const auto& order = comparing.given.order.route;
  const auto& reference = comparing.given.reference.route;
  if (!order || !reference) return comparing.notChecked(CheckId::route, WhyNot::notStated);
  const bool same = *order == *reference;
  comparing.check(CheckId::route).value = *order;
  comparing.check(CheckId::route).limit = *reference;
  compare(comparing, CheckId::route, {{Number(1), {}, Origin::field(path::route)}, std::nullopt, *order},
          Relation::same, {{Number(1), {}, Origin::field(path::referenceRoute)}, std::nullopt, *reference},
          same);
  if (!same)
    comparing.notes.tell(FindingCode::notCoveredRoute, path::route,
                         {{"ordered", *order}, {"reference", *reference}}, CheckId::route);
}

}  // namespace

void compareBands(Comparing& comparing) {
  compareAge(comparing);
  compareWeight(comparing);
  compareSurface(comparing);
  compareMedicine(comparing);
  compareRoute(comparing);
}

}  // namespace wardchalk::detail
