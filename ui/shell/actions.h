#pragma once

#include <QHash>
#include <QObject>
#include <QSet>
#include <functional>

#include "ui/shell/action_table.h"

class QAction;
class QMenu;
class QMenuBar;

namespace wardchalk::ui {

/// The actions of the table as they stand in the menus of a window.
class Actions : public QObject {
  Q_OBJECT

 public:
  Actions(QMenuBar* bar, QWidget* window);

  [[nodiscard]] QAction* operator[](ActionId id) const { return actions_.value(id); }
  [[nodiscard]] QMenu* menu(MenuId id) const { return menus_.value(id); }
  /// Leaves these actions alone in the menus and on their keys.
  void leaveOnly(const QSet<ActionId>& wanted);
  /// What an action does.
  void bind(ActionId id, std::function<void()> what);

 private:
  void fill(QMenuBar* bar, QWidget* window);

  QHash<ActionId, QAction*> actions_;
  QHash<MenuId, QMenu*> menus_;
};

}  // namespace wardchalk::ui
