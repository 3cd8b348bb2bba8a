#include "tests/ui/shell/everything_said.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QLabel>
#include <QMessageBox>
#include <QMetaProperty>
#include <QMimeData>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTextDocument>
#include <QTextEdit>
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

QString nameOf(const QObject* object) {
  return QLatin1String(object->metaObject()->className()) + u' ' + object->objectName();
}

/// The program's own wrapper of a tool tip, with nothing but plain text in it.
bool isOwnTip(QString text) {
  const QString begin = QStringLiteral("<p style='white-space:pre'>");
  const QString end = QStringLiteral("</p>");
  if (!text.startsWith(begin) || !text.endsWith(end)) return false;
  text = text.mid(begin.size(), text.size() - begin.size() - end.size());
  return !text.contains(u'<') && !text.contains(u'>');
}

/// The table of facts under a cover: its own tags, and plain text between them.
bool isTableOfFacts(QString text) {
  static const QRegularExpression tags(
      QStringLiteral("<table cellpadding=\"3\">|</table>|</?tr>|</?td>|</?b>"));
  return text.startsWith(QStringLiteral("<table cellpadding")) && !text.remove(tags).contains(u'<');
}

void addTipFault(QStringList& faults, const QString& text, const QString& where) {
  if (Qt::mightBeRichText(text) && !isOwnTip(text)) faults << where + QStringLiteral(" tip: ") + text;
}

void addLabelFault(QStringList& faults, const QLabel& label) {
  const QString text = label.text();
  const bool rich = label.textFormat() == Qt::RichText || label.textFormat() == Qt::MarkdownText ||
                    (label.textFormat() == Qt::AutoText && Qt::mightBeRichText(text));
  const bool facts = label.objectName() == QStringLiteral("cover-facts") && isTableOfFacts(text);
  if (rich && !text.isEmpty() && !facts) faults << nameOf(&label) + QStringLiteral(" label: ") + text;
}

/// Whether an ampersand of the text from outside stands for a key.
bool namesKey(QString text, const QString& mark) { return text.remove(QStringLiteral("&&")).contains(mark); }

void addItemFaults(QStringList& faults, const QWidget* widget) {
  const auto* view = qobject_cast<const QAbstractItemView*>(widget);
  if (!view || !view->model()) return;
  const QAbstractItemModel* model = view->model();
  for (int column = 0; column < model->columnCount(); ++column) {
    addTipFault(faults, model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString(), nameOf(view));
    for (int row = 0; row < model->rowCount(); ++row)
      for (const int role : {static_cast<int>(Qt::ToolTipRole), static_cast<int>(Qt::WhatsThisRole)})
        addTipFault(faults, model->index(row, column).data(role).toString(), nameOf(view));
  }
  for (const QLabel* inside : view->viewport()->findChildren<QLabel*>()) addLabelFault(faults, *inside);
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

QStringList markupFaults(const QString& mark) {
  QStringList faults;
  for (const QWidget* widget : QApplication::allWidgets()) {
    for (const QString& tip : {widget->toolTip(), widget->whatsThis(), widget->statusTip()})
      addTipFault(faults, tip, nameOf(widget));
    for (const QAction* action : widget->actions()) {
      addTipFault(faults, action->toolTip(), nameOf(action));
      if (namesKey(action->text(), mark))
        faults << nameOf(action) + QStringLiteral(" key: ") + action->text();
    }
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
      addLabelFault(faults, *label);
      if (label->buddy() && namesKey(label->text(), mark))
        faults << nameOf(label) + QStringLiteral(" key: ") + label->text();
    }
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    if (button && namesKey(button->text(), mark))
      faults << nameOf(button) + QStringLiteral(" key: ") + button->text();
    const auto* box = qobject_cast<const QMessageBox*>(widget);
    if (box && box->textFormat() != Qt::PlainText) faults << nameOf(box) + QStringLiteral(" message");
    const auto* edit = qobject_cast<const QTextEdit*>(widget);
    if (edit && edit->acceptRichText() && !edit->isReadOnly())
      faults << nameOf(edit) + QStringLiteral(" edit");
    addItemFaults(faults, widget);
  }
  return faults;
}

}  // namespace wardchalk::ui::test
