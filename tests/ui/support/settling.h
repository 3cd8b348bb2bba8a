#pragma once

#include <QAbstractItemView>
#include <QComboBox>
#include <QTest>

namespace wardchalk::ui::test {

/// Chooses from the open list, by keyboard.
inline void choose(QComboBox* box, int place) {
  QTest::keyClick(box, Qt::Key_Down);
  QTRY_VERIFY(box->view()->isVisible());
  box->view()->setCurrentIndex(box->model()->index(place, 0));
  QTest::keyClick(box->view(), Qt::Key_Return);
  QTRY_VERIFY(!box->view()->isVisible());
}

/// The boxes in which it is chosen how a question was settled, in their order.
inline QList<QComboBox*> settlingBoxes(const QWidget& in) {
  QList<QComboBox*> boxes;
  for (auto* box : in.findChildren<QComboBox*>())
    if (box->objectName().startsWith(QStringLiteral("settled_"))) boxes << box;
  return boxes;
}

inline void settleAll(const QWidget& in, int place = 1) {
  for (QComboBox* box : settlingBoxes(in)) choose(box, place);
}

}  // namespace wardchalk::ui::test
