#include "ui/record/rules_table.h"

#include <QCoreApplication>
#include <array>

namespace wardchalk::ui {

namespace {

#define CHOICE(text) QT_TRANSLATE_NOOP("Choice", text)
#define LABEL(text) QT_TRANSLATE_NOOP("Rule", text)

constexpr std::array pounds = {ChoiceWord{"exact", CHOICE("1 lb is 0.45359237 kg, exactly")},
                               ChoiceWord{"trade", CHOICE("2.2 lb are 1 kg, as often taught")}};
constexpr std::array kilograms = {ChoiceWord{"none", CHOICE("as they are, not rounded")},
                                  ChoiceWord{"0", CHOICE("to whole kg")},
                                  ChoiceWord{"1", CHOICE("to 1 decimal")},
                                  ChoiceWord{"2", CHOICE("to 2 decimals")},
                                  ChoiceWord{"3", CHOICE("to 3 decimals")},
                                  ChoiceWord{"4", CHOICE("to 4 decimals")},
                                  ChoiceWord{"5", CHOICE("to 5 decimals")},
                                  ChoiceWord{"6", CHOICE("to 6 decimals")}};
constexpr std::array formulas = {
    ChoiceWord{"mosteller", CHOICE("Mosteller")}, ChoiceWord{"haycock", CHOICE("Haycock")},
    ChoiceWord{"du-bois", CHOICE("Du Bois")}, ChoiceWord{"gehan-george", CHOICE("Gehan and George")}};
constexpr std::array surfaces = {
    ChoiceWord{"2", CHOICE("to 2 decimals")}, ChoiceWord{"3", CHOICE("to 3 decimals")},
    ChoiceWord{"4", CHOICE("to 4 decimals")}, ChoiceWord{"none", CHOICE("not at all: all its digits")}};
constexpr std::array ways = {ChoiceWord{"marks", CHOICE("to the marks of the syringe")},
                             ChoiceWord{"decimals", CHOICE("to decimals, whatever the marks")}};
constexpr std::array decimals = {ChoiceWord{"0", CHOICE("whole mL")}, ChoiceWord{"1", CHOICE("1 decimal")},
                                 ChoiceWord{"2", CHOICE("2 decimals")}, ChoiceWord{"3", CHOICE("3 decimals")},
                                 ChoiceWord{"4", CHOICE("4 decimals")}};

constexpr std::array silentReferences = {ChoiceWord{"ask", CHOICE("asked about")},
                                         ChoiceWord{"note", CHOICE("noted; for a class, not for a bedside")}};
constexpr std::array sizesWithoutAge = {ChoiceWord{"ask", CHOICE("asked about")},
                                        ChoiceWord{"note", CHOICE("noted; for a class, not for a bedside")}};
constexpr std::array silentOrders = {
    ChoiceWord{"needed", CHOICE("not checked before it is entered")},
    ChoiceWord{"one-dose", CHOICE("checked for one dose; for a class, not for a bedside")}};

constexpr std::array systems = {ChoiceWord{"none", CHOICE("asked about")},
                                ChoiceWord{"metric", CHOICE("in cm or kg")},
                                ChoiceWord{"household", CHOICE("in inches; a weight is asked about")}};

using G = RuleGroup;

constexpr std::array table = {
    RuleSpec{"name", G::set, LABEL("Name of these rules")},
    RuleSpec{"agreed_by", G::set, LABEL("Agreed by")},
    RuleSpec{"agreed_on", G::set, LABEL("Agreed on")},
    RuleSpec{"pounds", G::size, LABEL("Pounds become kilograms"), pounds},
    RuleSpec{"kilogram_decimals", G::size, LABEL("Kilograms are used"), kilograms},
    RuleSpec{"bsa_formula", G::size, LABEL("BSA by the formula of"), formulas},
    RuleSpec{"bsa_decimals", G::size, LABEL("BSA is rounded"), surfaces},
    RuleSpec{"round_to", G::amount, LABEL("Amounts are rounded"), ways},
    RuleSpec{"volume_decimals_below_1_mL", G::amount, LABEL("Below 1 mL, at most"), decimals},
    RuleSpec{"volume_decimals_from_1_mL", G::amount, LABEL("From 1 mL, at most"), decimals},
    RuleSpec{"rate_decimals", G::amount, LABEL("Rates in mL/h, at most"), decimals},
    RuleSpec{"smallest_volume", G::amount, LABEL("Smallest volume to measure"), {}},
    RuleSpec{
        "ask_below_percent", G::asking, LABEL("Ask when below this percentage of the recommended dose"), {}},
    RuleSpec{"ask_low_percent", G::asking, LABEL("Ask when below this percentage of a stated low end"), {}},
    RuleSpec{"ask_rounding_percent",
             G::asking,
             LABEL("Ask when rounding changes the dose by more than, in percent"),
             {}},
    RuleSpec{"bsa_differs_percent",
             G::asking,
             LABEL("Ask when a charted BSA is off by more than, in percent"),
             {}},
    RuleSpec{"weight_older_than", G::asking, LABEL("Ask when the weight is older than (none: never)"), {}},
    RuleSpec{"grace_percent",
             G::asking,
             LABEL("Ask, and not call it unsafe, up to this percentage over a reference"),
             {}},
    RuleSpec{"reference_schedule_missing", G::asking, LABEL("A reference that does not say how often is"),
             silentReferences},
    RuleSpec{"order_schedule_missing", G::asking, LABEL("An order that does not say how often is"),
             silentOrders},
    RuleSpec{"size_without_age", G::asking,
             LABEL("An unlikely weight for a height, where no age is stated, is"), sizesWithoutAge},
    RuleSpec{"many_units", G::asking, LABEL("Ask about more tablets, vials or syringes than"), {}},
    RuleSpec{"unit_system", G::screen, LABEL("A number without a unit is"), systems},
    RuleSpec{"idle_minutes", G::screen, LABEL("Cover the entries after minutes without a key"), {}},
};

#undef CHOICE
#undef LABEL

}  // namespace

std::span<const RuleSpec> ruleTable() { return table; }

QString labelOf(const RuleSpec& spec) { return QCoreApplication::translate("Rule", spec.label); }

QString headingOf(RuleGroup group) {
  constexpr std::array headings = {
      QT_TRANSLATE_NOOP("Rule", "This set of rules"), QT_TRANSLATE_NOOP("Rule", "The child's size"),
      QT_TRANSLATE_NOOP("Rule", "Amounts and rates"), QT_TRANSLATE_NOOP("Rule", "What is asked about"),
      QT_TRANSLATE_NOOP("Rule", "The screen")};
  return QCoreApplication::translate("Rule", headings[static_cast<std::size_t>(group)]);
}

}  // namespace wardchalk::ui
