#include "tests/ui/shell/everything_said.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QMetaProperty>
#include <QMimeData>
#include <QTableWidget>
#include <QWidget>

namespace wardchalk::ui::test {

namespace {

/// Every property that is text: title, tool tip, what is typed, what it holds in the place of it.
void addProperties(QStringList& texts, const QObject* object) {
  const QMetaObject* meta = object->metaObject();
  for (int i = 0; i < meta->propertyCount(); ++i) {
    const QMetaProperty property = meta->property(i);
    if (property.metaType().id() != QMetaType::QString || property.name() == QByteArray("styleSheet"))
      continue;
    texts << property.read(object).toString();
  }
}

void addItems(QStringList& texts, const QWidget* widget) {
  const auto* view = qobject_cast<const QAbstractItemView*>(widget);
  if (!view || !view->model()) return;
  const QAbstractItemModel* model = view->model();
  for (int row = 0; row < model->rowCount(); ++row)
    for (int column = 0; column < model->columnCount(); ++column)
      for (const int role : {static_cast<int>(Qt::DisplayRole), static_cast<int>(Qt::ToolTipRole),
                             static_cast<int>(Qt::AccessibleTextRole)})
        texts << model->index(row, column).data(role).toString();
}

void addAccessible(QStringList& texts, QAccessibleInterface* one, int depth) {
  if (!one || !one->isValid() || depth > 20) return;
  for (const QAccessible::Text kind : {QAccessible::Name, QAccessible::Description, QAccessible::Value,
                                       QAccessible::Help, QAccessible::Accelerator})
    texts << one->text(kind);
  if (QAccessibleTextInterface* text = one->textInterface()) texts << text->text(0, text->characterCount());
  for (int i = 0; i < one->childCount(); ++i) addAccessible(texts, one->child(i), depth + 1);
}

}  // namespace

QStringList everythingSaid() {
  QStringList texts;
  for (const QWidget* widget : QApplication::allWidgets()) {
    addProperties(texts, widget);
    addItems(texts, widget);
    for (const QAction* action : widget->actions()) addProperties(texts, action);
  }
  for (QWidget* top : QApplication::topLevelWidgets())
    addAccessible(texts, QAccessible::queryAccessibleInterface(top), 0);
  const QMimeData* offered = QApplication::clipboard()->mimeData();
  if (offered) texts << offered->text() << offered->html();
  texts.removeAll(QString());
  return texts;
}

QString firstFound(const QStringList& texts, const QStringList& wanted) {
  for (QString text : texts) {
    text.replace(QChar::Nbsp, u' ');
    for (const QString& one : wanted)
      if (text.contains(one)) return one + QStringLiteral(" in: ") + text.left(200);
  }
  return {};
}

}  // namespace wardchalk::ui::test
