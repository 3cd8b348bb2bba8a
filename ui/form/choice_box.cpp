#include "ui/form/choice_box.h"
#include "ui/theme/text.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QStyleOptionComboBox>
#include <QWheelEvent>
#include <algorithm>

namespace wardchalk::ui {

ChoiceBox::ChoiceBox(QWidget* parent, Empty empty) : QComboBox(parent) {
  setFocusPolicy(Qt::StrongFocus);  // not Qt::WheelFocus
  setMinimumContentsLength(1);
  if (empty == Empty::allowed) addItem(QString(), QString());
  connect(this, &QComboBox::currentIndexChanged, this, [this] {
    if (byKey_)
      Q_EMIT passed();
    else
      Q_EMIT made();
  });
}

void ChoiceBox::addChoice(std::string_view id, const QString& words) { addItem(words, fromCore(id)); }

std::string ChoiceBox::chosen() const { return currentData().toString().toStdString(); }

void ChoiceBox::choose(std::string_view id) {
  const QSignalBlocker quietly(this);
  const QString wanted = fromCore(id);
  const int index = wanted.isEmpty() ? 0 : qMax(0, findData(wanted));
  if (index == currentIndex()) return;
  if (sinceLetter_.isValid())
    view()->keyboardSearch(QString());  // letters typed before belong to another search
  sinceLetter_.invalidate();
  setCurrentIndex(index);
}

bool ChoiceBox::isSpaceInWords(const QKeyEvent& event) const {
  return event.key() == Qt::Key_Space && event.modifiers() == Qt::NoModifier && sinceLetter_.isValid() &&
         sinceLetter_.elapsed() < QApplication::keyboardInputInterval();
}

/// Goes on with the search that the letters before began.
void ChoiceBox::searchOn(const QString& text) {
  view()->setCurrentIndex(model()->index(currentIndex(), modelColumn()));
  view()->keyboardSearch(text);
  if (view()->currentIndex().isValid()) setCurrentIndex(view()->currentIndex().row());
}

void ChoiceBox::keyPressEvent(QKeyEvent* event) {
  byKey_ = true;
  if (isSpaceInWords(*event))
    searchOn(event->text());
  else
    QComboBox::keyPressEvent(event);
  byKey_ = false;
  if (!event->text().trimmed().isEmpty()) sinceLetter_.start();
}

/// As wide as its least letters ask for, whatever its words are; the columns of a row say the rest. Qt has a
/// policy for this, but would make the list of every box at once, which is made here when it is first opened.
QSize ChoiceBox::sizeHint() const {
  QStyleOptionComboBox option;
  initStyleOption(&option);
  const QSize letters(
      minimumContentsLength() * fontMetrics().horizontalAdvance(QLatin1Char('X')) + iconSize().width() + 4,
      std::max(fontMetrics().height() + 2, iconSize().height() + 2));
  return style()->sizeFromContents(QStyle::CT_ComboBox, &option, letters, this);
}

QSize ChoiceBox::minimumSizeHint() const { return sizeHint(); }

void ChoiceBox::wheelEvent(QWheelEvent* event) { event->ignore(); }

}  // namespace wardchalk::ui
