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
  QHash<MenuId, QMenu*> menus;
  for (const MenuSpec& spec : menuTable()) {
    const bool inside = spec.id == MenuId::units;
    QMenu* menu =
        inside ? menus[MenuId::view]->addMenu(translated(spec.text)) : bar->addMenu(translated(spec.text));
    menu->setObjectName(QLatin1String(spec.name));
    menus.insert(spec.id, menu);
  }
  auto* units = new QActionGroup(this);
  for (const ActionSpec& spec : actionTable()) {
    QMenu* menu = menus[spec.menu];
    // The list of unit systems was added to the view menu first; what follows stands above it.
    QAction* before = spec.menu == MenuId::view ? menus[MenuId::units]->menuAction() : nullptr;
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

void Actions::bind(ActionId id, std::function<void()> what) {
  connect(actions_.value(id), &QAction::triggered, this, [what = std::move(what)] { what(); });
}

}  // namespace wardchalk::ui
