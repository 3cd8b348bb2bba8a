#pragma once

class QStackedWidget;
class QVBoxLayout;
class QWidget;

namespace wardchalk {
class CaseSession;
struct HouseRules;
}  // namespace wardchalk

namespace wardchalk::ui {

class CaseEditor;
class Dialogs;
class OwnClipboard;

/// What a desk of the window may reach. All of it outlives the desk.
struct WindowParts {
  QWidget* window;
  CaseEditor& editor;
  CaseSession& session;  ///< where the case stands; a desk tells it what happens and shows what it says
  const HouseRules& rules;
  Dialogs& dialogs;
  OwnClipboard& clipboard;
  QStackedWidget* pages;  ///< the first is the form with its working
  QVBoxLayout* notices;   ///< lines that stand across the window, above the pages
};

}  // namespace wardchalk::ui
