#include "ui/shell/action_table.h"

#include <QCoreApplication>
#include <array>

namespace wardchalk::ui {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("Action", text)

using A = ActionId;
using M = MenuId;

// clang-format off
constexpr std::array actions = {
    ActionSpec{A::newChild, M::file, "new-child", TEXT("&New child"), "Ctrl+N"},
    ActionSpec{A::open, M::file, "open", TEXT("&Open a case …"), "Ctrl+O", true},
    ActionSpec{A::save, M::file, "save", TEXT("&Save the case"), "Ctrl+S"},
    ActionSpec{A::saveAs, M::file, "save-as", TEXT("Save the case &as …"), "Ctrl+Shift+S"},
    ActionSpec{A::chooseReference, M::file, "choose-reference", TEXT("Choose a re&ference from the list …"), "Ctrl+R", true},
    ActionSpec{A::emptyReference, M::file, "empty-reference", TEXT("&Empty the reference"), "Ctrl+Shift+R"},
    ActionSpec{A::severalCases, M::file, "several-cases", TEXT("Several &cases …"), "Ctrl+L"},
    ActionSpec{A::nextCase, M::file, "next-case", TEXT("Ne&xt of several cases"), "Ctrl+PgDown"},
    ActionSpec{A::previousCase, M::file, "previous-case", TEXT("Pre&vious of several cases"), "Ctrl+PgUp"},
    ActionSpec{A::sheetPrint, M::file, "sheet-print", TEXT("&Print the sheet …"), "Ctrl+P", true},
    ActionSpec{A::sheetPreview, M::file, "sheet-preview", TEXT("Look at the shee&t first"), "Ctrl+Shift+P"},
    ActionSpec{A::sheetPdf, M::file, "sheet-pdf", TEXT("Sheet as P&DF …"), "Ctrl+Alt+P"},
    ActionSpec{A::quit, M::file, "quit", TEXT("&Quit"), "Ctrl+Q", true},

    ActionSpec{A::undo, M::edit, "undo", TEXT("&Undo"), "Ctrl+Z"},
    ActionSpec{A::redo, M::edit, "redo", TEXT("&Redo"), "Ctrl+Shift+Z;Ctrl+Y"},
    ActionSpec{A::settings, M::edit, "settings", TEXT("Se&ttings …"), "Ctrl+,", true, false, true},

    ActionSpec{A::copyWorking, M::copyWorking, "copy-working", TEXT("&Text"), "Ctrl+Shift+C"},
    ActionSpec{A::copyWorkingMathMl, M::copyWorking, "copy-working-mathml", TEXT("&MathML"), "Ctrl+Shift+K, M"},
    ActionSpec{A::copyWorkingLatex, M::copyWorking, "copy-working-latex", TEXT("&LaTeX"), "Ctrl+Shift+K, L"},
    ActionSpec{A::copyWorkingPicture, M::copyWorking, "copy-working-picture", TEXT("&Picture (PNG)"), "Ctrl+Shift+K, P"},
    ActionSpec{A::copyWorkingSvg, M::copyWorking, "copy-working-svg", TEXT("&Drawing (SVG)"), "Ctrl+Shift+K, D"},

    ActionSpec{A::copyStep, M::copyStep, "copy-step", TEXT("&Text"), "Ctrl+K, T"},
    ActionSpec{A::copyStepMathMl, M::copyStep, "copy-step-mathml", TEXT("&MathML"), "Ctrl+K, M"},
    ActionSpec{A::copyStepLatex, M::copyStep, "copy-step-latex", TEXT("&LaTeX"), "Ctrl+K, L"},
    ActionSpec{A::copyStepPicture, M::copyStep, "copy-step-picture", TEXT("&Picture (PNG)"), "Ctrl+K, P"},
    ActionSpec{A::copyStepSvg, M::copyStep, "copy-step-svg", TEXT("&Drawing (SVG)"), "Ctrl+K, D"},

    ActionSpec{A::zoomIn, M::view, "zoom-in", TEXT("&Larger letters"), "Ctrl++;Ctrl+="},
    ActionSpec{A::zoomOut, M::view, "zoom-out", TEXT("&Smaller letters"), "Ctrl+-"},
    ActionSpec{A::zoomReset, M::view, "zoom-reset", TEXT("&Usual letters"), "Ctrl+0"},
    ActionSpec{A::otherSide, M::view, "other-side", TEXT("Between form and &working"), "F6", true},
    ActionSpec{A::goToFlag, M::view, "go-to-flag", TEXT("Go to the fla&g"), "F7"},
    ActionSpec{A::goToForm, M::view, "go-to-form", TEXT("Go to the fo&rm"), "F5"},
    ActionSpec{A::sayAgain, M::view, "say-again", TEXT("S&ay the result again"), "F3"},
    ActionSpec{A::formWider, M::view, "form-wider", TEXT("Wi&der form"), "Shift+F6", true},
    ActionSpec{A::formNarrower, M::view, "form-narrower", TEXT("&Narrower form"), "Ctrl+F6"},
    ActionSpec{A::moreFields, M::view, "more-fields", TEXT("Show every f&ield"), "F8", true, true},
    ActionSpec{A::board, M::view, "board", TEXT("The working on a &board, full screen"), "F11", true},
    ActionSpec{A::practice, M::view, "practice", TEXT("&Practice with invented medicines …"), "F12", true},

    ActionSpec{A::secondCheck, M::check, "second-check-begin", TEXT("A &second person checks alone"), "F9"},
    ActionSpec{A::secondCompare, M::check, "second-check-compare", TEXT("&Compare the two"), "Ctrl+F9"},
    ActionSpec{A::secondLeave, M::check, "second-check-leave", TEXT("&Leave the second check"), "Shift+F9"},
    ActionSpec{A::rulesEdit, M::check, "rules-edit", TEXT("House &rules …"), "Ctrl+Shift+H", true},

    ActionSpec{A::unitsMetric, M::units, "units-metric", TEXT("&Metric: cm and kg"), "Ctrl+1", false, true},
    ActionSpec{A::unitsHousehold, M::units, "units-household", TEXT("&Household: feet and pounds"), "Ctrl+2", false, true},
    ActionSpec{A::unitsNone, M::units, "units-none", TEXT("&None until chosen"), "Ctrl+3", false, true},

    ActionSpec{A::shortHelp, M::help, "short-help", TEXT("&How to use this"), "F1"},
    ActionSpec{A::example, M::help, "example", TEXT("Show a &worked example"), "F2"},
    ActionSpec{A::about, M::help, "about", TEXT("&About Wardchalk"), "Shift+F1", true},
};
// clang-format on

#undef TEXT

constexpr std::array menus = {
    MenuSpec{M::file, M::file, "file", QT_TRANSLATE_NOOP("Action", "&File")},
    MenuSpec{M::edit, M::edit, "edit", QT_TRANSLATE_NOOP("Action", "&Edit")},
    MenuSpec{M::copyWorking, M::edit, "copy-working-as", QT_TRANSLATE_NOOP("Action", "Copy the &working as")},
    MenuSpec{M::copyStep, M::edit, "copy-step-as", QT_TRANSLATE_NOOP("Action", "Copy this &step as")},
    MenuSpec{M::view, M::view, "view", QT_TRANSLATE_NOOP("Action", "&View")},
    MenuSpec{M::units, M::view, "units", QT_TRANSLATE_NOOP("Action", "Units &offered")},
    MenuSpec{M::check, M::check, "check", QT_TRANSLATE_NOOP("Action", "&Check")},
    MenuSpec{M::help, M::help, "help", QT_TRANSLATE_NOOP("Action", "&Help")},
};

}  // namespace

std::span<const ActionSpec> actionTable() { return actions; }
std::span<const MenuSpec> menuTable() { return menus; }

}  // namespace wardchalk::ui
