#include "ui/record/rows_page.h"

#include <QApplication>
#include <QLineEdit>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/form/choice_box.h"
#include "ui/theme/edges.h"
#include "ui/theme/focus_ring.h"
#include "ui/theme/plain_scroll_bar.h"

namespace wardchalk::ui {

namespace {

/// With the edges of its boxes, as in the form.
class EdgedPage : public QWidget {
 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    for (const QWidget* box : findChildren<QWidget*>()) {
      const bool typed = qobject_cast<const QLineEdit*>(box) || qobject_cast<const ChoiceBox*>(box);
      if (!typed || !box->isVisible()) continue;
      paintEdge(painter, {box->mapTo(this, QPoint()), box->size()}, palette());
    }
  }
};

}  // namespace

RowsPage::RowsPage(QWidget* parent) : QScrollArea(parent) {
  auto* page = new EdgedPage;
  column_ = new QVBoxLayout(page);
  column_->setSpacing(8);
  setWidgetResizable(true);
  setFocusPolicy(Qt::NoFocus);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBar(new PlainScrollBar(Qt::Vertical));
  setWidget(page);
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) { keepInView(now); });
}

// What has the keyboard goes with the rest of the widget, after what is ours has gone: nothing is to be kept
// in view then.
RowsPage::~RowsPage() { disconnect(qApp, nullptr, this, nullptr); }

/// The ring comes last, above the rows.
void RowsPage::finish() {
  column_->addStretch(1);
  new FocusRing(widget());
}

void RowsPage::keepInView(QWidget* now) {
  constexpr int air = 24;
  if (now && widget()->isAncestorOf(now)) ensureWidgetVisible(now, 0, air);
}

}  // namespace wardchalk::ui
