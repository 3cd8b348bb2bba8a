#include "ui/form/field_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "core/medicine/paths.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

constexpr std::array sexes = {ChoiceWord{"female", QT_TRANSLATE_NOOP("Choice", "female")},
                              ChoiceWord{"male", QT_TRANSLATE_NOOP("Choice", "male")}};
constexpr std::array methods = {ChoiceWord{"measured", QT_TRANSLATE_NOOP("Choice", "measured")},
                                ChoiceWord{"estimated", QT_TRANSLATE_NOOP("Choice", "estimated")},
                                ChoiceWord{"charted", QT_TRANSLATE_NOOP("Choice", "charted")}};
constexpr std::array routes = {ChoiceWord{"oral", QT_TRANSLATE_NOOP("Choice", "oral")},
                               ChoiceWord{"enteral", QT_TRANSLATE_NOOP("Choice", "enteral (tube)")},
                               ChoiceWord{"intravenous", QT_TRANSLATE_NOOP("Choice", "intravenous")},
                               ChoiceWord{"intramuscular", QT_TRANSLATE_NOOP("Choice", "intramuscular")},
                               ChoiceWord{"subcutaneous", QT_TRANSLATE_NOOP("Choice", "subcutaneous")},
                               ChoiceWord{"rectal", QT_TRANSLATE_NOOP("Choice", "rectal")},
                               ChoiceWord{"inhaled", QT_TRANSLATE_NOOP("Choice", "inhaled")},
                               ChoiceWord{"topical", QT_TRANSLATE_NOOP("Choice", "topical")}};
constexpr std::array kinds = {ChoiceWord{"liquid", QT_TRANSLATE_NOOP("Choice", "liquid")},
                              ChoiceWord{"powder", QT_TRANSLATE_NOOP("Choice", "powder to mix")},
                              ChoiceWord{"solid", QT_TRANSLATE_NOOP("Choice", "tablet or capsule")}};
constexpr std::array pieces = {ChoiceWord{"1", QT_TRANSLATE_NOOP("Choice", "whole only")},
                               ChoiceWord{"2", QT_TRANSLATE_NOOP("Choice", "halves")},
                               ChoiceWord{"4", QT_TRANSLATE_NOOP("Choice", "quarters")}};

#define LABEL(text) QT_TRANSLATE_NOOP("Field", text)
#define HINT(text) QT_TRANSLATE_NOOP("Hint", text)

using G = FieldGroup;
using K = FieldKind;
using V = InView;

// clang-format off
constexpr std::array table = {
    FieldSpec{path::height, G::child, K::quantity, V::always, 4, LABEL("Heigh&t"), nullptr},
    FieldSpec{path::weight, G::child, K::quantity, V::always, 4, LABEL("&Weight"), nullptr},
    FieldSpec{path::age, G::child, K::quantity, V::always, 4, LABEL("&Age"), nullptr},
    FieldSpec{path::sex, G::child, K::words, V::unfolded, 4, LABEL("Se&x"), HINT("only to judge the size"), sexes},
    FieldSpec{path::bsa, G::child, K::quantity, V::unfolded, 4, LABEL("Charted BSA"), HINT("if the chart states it")},
    FieldSpec{path::weightMethod, G::child, K::words, V::unfolded, 4, LABEL("Weight was"), nullptr, methods},
    FieldSpec{path::weighed, G::child, K::quantity, V::unfolded, 4, LABEL("Weighed"), HINT("today, or how long ago")},
    FieldSpec{path::bornEarly, G::child, K::flag, V::unfolded, 3, LABEL("Born early"), nullptr},
    FieldSpec{path::sizeConfirmed, G::child, K::flag, V::unfolded, 5, LABEL("Unusual size confirmed"), nullptr},

    FieldSpec{path::medicine, G::order, K::words, V::always, 8, LABEL("&Medicine"), nullptr},
    FieldSpec{path::route, G::order, K::words, V::always, 4, LABEL("&Route"), nullptr, routes},
    FieldSpec{path::dose, G::order, K::quantity, V::always, 6, LABEL("&Dose ordered"), nullptr},
    FieldSpec{path::schedule, G::order, K::quantity, V::always, 6, LABEL("How &often"), nullptr},
    FieldSpec{path::asNeeded, G::order, K::flag, V::always, 6, LABEL("Only as &needed"), nullptr},
    FieldSpec{path::maxDosesPerDay, G::order, K::words, V::asNeeded, 6, LABEL("Most doses ordered in 24 h"), nullptr},
    FieldSpec{path::title, G::order, K::words, V::unfolded, 12, LABEL("Title of this sheet"), HINT("no names or numbers of people")},

    FieldSpec{path::low, G::reference, K::quantity, V::always, 4, LABEL("From, if &stated"), nullptr},
    FieldSpec{path::high, G::reference, K::quantity, V::always, 4, LABEL("U&p to"), nullptr},
    FieldSpec{path::limitOnly, G::reference, K::flag, V::always, 4, LABEL("maximum only"), nullptr},
    FieldSpec{path::referenceSchedule, G::reference, K::quantity, V::always, 4, LABEL("How often, &if stated"), nullptr},
    FieldSpec{path::referenceMedicine, G::reference, K::words, V::always, 4, LABEL("For medicine"), nullptr},
    FieldSpec{path::source, G::reference, K::words, V::always, 4, LABEL("Source and pa&ge"), nullptr},
    FieldSpec{path::maxPerDose, G::reference, K::quantity, V::always, 4, LABEL("Maximum per dose"), nullptr},
    FieldSpec{path::maxPerDay, G::reference, K::quantity, V::always, 4, LABEL("Maximum in 24 h"), nullptr},
    FieldSpec{path::referenceMaxDoses, G::reference, K::words, V::asNeeded, 4, LABEL("Most doses in 24 h"), nullptr},
    FieldSpec{path::alsoCalled, G::reference, K::words, V::unfolded, 12, LABEL("Medicine also called"), HINT("other names for it, with a semicolon between")},
    FieldSpec{path::secondCheckRequired, G::reference, K::flag, V::unfolded, 6, LABEL("Second check required"), nullptr},
    FieldSpec{path::referenceRoute, G::reference, K::words, V::unfolded, 6, LABEL("For the route"), nullptr, routes},
    FieldSpec{path::ageFrom, G::reference, K::quantity, V::unfolded, 3, LABEL("Age from"), nullptr},
    FieldSpec{path::ageOver, G::reference, K::quantity, V::unfolded, 3, LABEL("Age over"), nullptr},
    FieldSpec{path::ageBelow, G::reference, K::quantity, V::unfolded, 3, LABEL("Age below"), nullptr},
    FieldSpec{path::ageUpTo, G::reference, K::quantity, V::unfolded, 3, LABEL("Age up to"), nullptr},
    FieldSpec{path::weightFrom, G::reference, K::quantity, V::unfolded, 3, LABEL("Weight from"), nullptr},
    FieldSpec{path::weightOver, G::reference, K::quantity, V::unfolded, 3, LABEL("Weight over"), nullptr},
    FieldSpec{path::weightBelow, G::reference, K::quantity, V::unfolded, 3, LABEL("Weight below"), nullptr},
    FieldSpec{path::weightUpTo, G::reference, K::quantity, V::unfolded, 3, LABEL("Weight up to"), nullptr},
    FieldSpec{path::bsaFrom, G::reference, K::quantity, V::unfolded, 3, LABEL("BSA from"), nullptr},
    FieldSpec{path::bsaOver, G::reference, K::quantity, V::unfolded, 3, LABEL("BSA over"), nullptr},
    FieldSpec{path::bsaBelow, G::reference, K::quantity, V::unfolded, 3, LABEL("BSA below"), nullptr},
    FieldSpec{path::bsaUpTo, G::reference, K::quantity, V::unfolded, 3, LABEL("BSA up to"), nullptr},

    FieldSpec{path::stockKind, G::stock, K::words, V::always, 4, LABEL("Stoc&k is"), nullptr, kinds},
    FieldSpec{path::content, G::stock, K::quantity, V::powder, 4, LABEL("Vial holds"), nullptr},
    FieldSpec{path::diluent, G::stock, K::quantity, V::powder, 4, LABEL("Diluent to add"), nullptr},
    FieldSpec{path::finalVolume, G::stock, K::quantity, V::powder, 4, LABEL("Final volume"), nullptr},
    FieldSpec{path::strength, G::stock, K::quantity, V::always, 8, LABEL("&Label says"), nullptr},
    FieldSpec{path::dividesInto, G::stock, K::words, V::solid, 6, LABEL("Scored? Given in"), HINT("only if it may be cut"), pieces},
    FieldSpec{path::displacement, G::stock, K::quantity, V::powder, 4, LABEL("Displacement"), HINT("if the leaflet states it")},

    FieldSpec{path::infusionVolume, G::infusion, K::quantity, V::unfolded, 4, LABEL("Volume to infuse"), nullptr},
    FieldSpec{path::infusionOver, G::infusion, K::quantity, V::unfolded, 4, LABEL("Run time"), nullptr},
    FieldSpec{path::dropFactor, G::infusion, K::quantity, V::unfolded, 4, LABEL("Drop factor"), nullptr},
    FieldSpec{path::minInfusionTime, G::infusion, K::quantity, V::unfolded, 6, LABEL("Reference: shortest time"), nullptr},
    FieldSpec{path::maxInfusionRate, G::infusion, K::quantity, V::unfolded, 6, LABEL("Reference: maximum rate"), nullptr},
    FieldSpec{path::maxConcentration, G::infusion, K::quantity, V::unfolded, 6, LABEL("Maximum concentration"), nullptr},
    FieldSpec{path::minConcentration, G::infusion, K::quantity, V::unfolded, 6, LABEL("Minimum concentration"), nullptr},
};
// clang-format on

#undef LABEL
#undef HINT

QString translated(const char* context, const char* text) {
  return QCoreApplication::translate(context, text);
}

}  // namespace

std::span<const FieldSpec> fieldTable() { return table; }

const FieldSpec& fieldSpec(std::string_view path) {
  const auto found =
      std::find_if(table.begin(), table.end(), [&](const FieldSpec& spec) { return spec.path == path; });
  Q_ASSERT(found != table.end());
  return *found;
}

QString labelOf(const FieldSpec& spec) { return translated("Field", spec.label); }

QString labelOf(const FieldSpec& spec, std::string_view stockKind) {
  if (spec.path == path::strength && stockKind == "powder")
    return translated("Field", QT_TRANSLATE_NOOP("Field", "&Label: strength after mixing"));
  return labelOf(spec);
}

QString nameOf(QString label) { return label.remove(QLatin1Char('&')); }

QString nameOf(const FieldSpec& spec) { return nameOf(labelOf(spec)); }

QString wordsOf(const ChoiceWord& choice) { return translated("Choice", choice.words); }

QString headingOf(FieldGroup group) {
  switch (group) {
    case FieldGroup::child:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "Child"));
    case FieldGroup::order:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "Order"));
    case FieldGroup::reference:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "Reference"));
    case FieldGroup::stock:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "On hand"));
    case FieldGroup::infusion:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "Infusion"));
  }
  return {};
}

QString moreOf(FieldGroup group) {
  switch (group) {
    case FieldGroup::child:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "sex, charted BSA, weighing"));
    case FieldGroup::order:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "title"));
    case FieldGroup::reference:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "bands, route"));
    case FieldGroup::stock:
      return {};
    case FieldGroup::infusion:
      return translated("Form", QT_TRANSLATE_NOOP("Form", "volume, time, drops"));
  }
  return {};
}

std::optional<std::string_view> firstRefused(const CaseDraft& draft) {
  for (const FieldSpec& spec : fieldTable())
    if (draft.state(spec.path) == FieldState::refused) return spec.path;
  return std::nullopt;
}

}  // namespace wardchalk::ui
