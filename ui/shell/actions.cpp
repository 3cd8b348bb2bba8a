#include "ui/shell/actions.h"

#include <QAction>
#include <QActionGroup>
#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>

namespace wardchalk::ui {

namespace {

QString translated(const char* text) { return QCoreApplication::translate("Action", text); }

QList<QKeySequence> shortcutsOf(const ActionSpec& spec) {
  QList<QKeySequence> keys;
  for (const QString& key : QString::fromLatin1(spec.shortcut).split(QLatin1Char(';')))
    keys << QKeySequence(key, QKeySequence::PortableText);
  return keys;
}

}  // namespace

Actions::Actions(QMenuBar* bar, QWidget* window) : QObject(window) { fill(bar, window); }

void Actions::fill(QMenuBar* bar, QWidget* window) {
  QHash<MenuId, QAction*> firstInside;
  for (const MenuSpec& spec : menuTable()) {
    QMenu* home = menus_.value(spec.inside);
    QMenu* menu = home ? home->addMenu(translated(spec.text)) : bar->addMenu(translated(spec.text));
    menu->setObjectName(QLatin1String(spec.name));
    menus_.insert(spec.id, menu);
    if (home && !firstInside.contains(spec.inside)) firstInside.insert(spec.inside, menu->menuAction());
  }
  auto* units = new QActionGroup(this);
  for (const ActionSpec& spec : actionTable()) {
    QMenu* menu = menus_[spec.menu];
    // Menus inside a menu were added to it first; what follows stands above them.
    QAction* before = spec.belowMenus ? nullptr : firstInside.value(spec.menu);
    if (spec.opensGroup) menu->insertSeparator(before);
    auto* action = new QAction(translated(spec.text), window);
    action->setObjectName(QLatin1String(spec.name));
    action->setShortcuts(shortcutsOf(spec));
    action->setCheckable(spec.checkable);
    if (spec.menu == MenuId::units) units->addAction(action);
    menu->insertAction(before, action);
    actions_.insert(spec.id, action);
  }
}

/// Hidden and not greyed: whether an action is greyed is the business of whoever offers it.
void Actions::leaveOnly(const QSet<ActionId>& wanted) {
  for (auto one = actions_.begin(); one != actions_.end(); ++one)
    one.value()->setVisible(wanted.contains(one.key()));
}

void Actions::bind(ActionId id, std::function<void()> what) {
  connect(actions_.value(id), &QAction::triggered, this, [what = std::move(what)] { what(); });
}

}  // namespace wardchalk::ui
