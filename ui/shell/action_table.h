#pragma once

#include <cstdint>
#include <span>

namespace wardchalk::ui {

/// Everything that a menu or a shortcut can do.
enum class ActionId : std::uint8_t {
  newChild,
  open,
  save,
  saveAs,
  chooseReference,
  emptyReference,
  severalCases,
  nextCase,
  previousCase,
  sheetPrint,
  sheetPreview,
  sheetPdf,
  quit,
  undo,
  redo,
  settings,
  copyWorking,
  copyWorkingMathMl,
  copyWorkingLatex,
  copyWorkingPicture,
  copyWorkingSvg,
  copyStep,
  copyStepMathMl,
  copyStepLatex,
  copyStepPicture,
  copyStepSvg,
  zoomIn,
  zoomOut,
  zoomReset,
  otherSide,
  goToFlag,
  goToForm,
  formWider,
  formNarrower,
  moreFields,
  sayAgain,
  board,
  secondCheck,
  secondCompare,
  secondLeave,
  rulesEdit,
  practice,
  unitsMetric,
  unitsHousehold,
  unitsNone,
  shortHelp,
  example,
  about,
};

enum class MenuId : std::uint8_t { file, edit, copyWorking, copyStep, view, units, check, help };

/// One action: declared here once, with its place, its words and its shortcut.
struct ActionSpec {
  ActionId id;
  MenuId menu;
  const char* name;         ///< object name; stable
  const char* text;         ///< English, with its mnemonic; translated in the context "Action"
  const char* shortcut;     ///< portable text; a second one after a semicolon
  bool opensGroup = false;  ///< a line stands before it
  bool checkable = false;
  bool belowMenus = false;  ///< it stands below the menus that its menu holds, not above them
};

[[nodiscard]] std::span<const ActionSpec> actionTable();

struct MenuSpec {
  MenuId id;
  MenuId inside;  ///< the menu that opens it; itself when it stands in the bar
  const char* name;
  const char* text;
};

[[nodiscard]] std::span<const MenuSpec> menuTable();

}  // namespace wardchalk::ui
