#include "ui/paper/sheet_preview.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "ui/paper/sheet_pages.h"
#include "ui/theme/buttons.h"
#include "ui/theme/plain_label.h"
#include "ui/theme/target.h"

namespace wardchalk::ui {

namespace {

constexpr QSize usualSize(900, 700);
constexpr double zoomStep = 1.25;
constexpr double leastZoom = 0.5;
constexpr double mostZoom = 4;

}  // namespace

SheetPreview::SheetPreview(SheetContent content, PaperSize paper, QWidget* parent)
    : QDialog(parent),
      content_(std::move(content)),
      pages_(new SheetPages(nullptr)),
      scroll_(new QScrollArea(this)) {
  setAttribute(Qt::WA_DeleteOnClose);
  setObjectName(QStringLiteral("sheet-preview"));
  setWindowTitle(tr("The sheet as it is printed"));
  pages_->setObjectName(QStringLiteral("sheet-pages"));
  scroll_->setWidget(pages_);
  scroll_->setAlignment(Qt::AlignHCenter);
  scroll_->setFocusPolicy(Qt::NoFocus);
  auto* column = new QVBoxLayout(this);
  column->addWidget(scroll_, 1);
  column->addWidget(buildRow(paper));
  setPaper(paper);
  resize(usualSize);
  pages_->setFocus(Qt::OtherFocusReason);
}

int SheetPreview::pageCount() const { return static_cast<int>(pages_->sheet().pages.size()); }

QWidget* SheetPreview::buildRow(PaperSize paper) {
  auto* row = new QWidget(this);
  auto* line = new QHBoxLayout(row);
  line->setContentsMargins(0, 0, 0, 0);
  auto* label = new PlainLabel(tr("P&aper:"), row);
  auto* sizes = new QComboBox(row);
  sizes->setObjectName(QStringLiteral("paper"));
  sizes->setMinimumHeight(leastTarget);
  sizes->addItems({tr("A4"), tr("Letter")});
  sizes->setCurrentIndex(static_cast<int>(paper));
  label->setBuddy(sizes);
  connect(sizes, &QComboBox::currentIndexChanged, this, [this](int index) {
    setPaper(static_cast<PaperSize>(index));
    Q_EMIT paperChosen(static_cast<PaperSize>(index));
  });
  line->addWidget(label);
  line->addWidget(sizes);
  line->addStretch(1);
  const auto button = [&](const QString& text, const char* name) {
    auto* made = plainButton(text, name, row);
    line->addWidget(made);
    return made;
  };
  connect(button(tr("&Print …"), "print"), &QPushButton::clicked, this, &SheetPreview::printWanted);
  connect(button(tr("Save as P&DF …"), "pdf"), &QPushButton::clicked, this, &SheetPreview::pdfWanted);
  connect(button(tr("&Close"), "close"), &QPushButton::clicked, this, &QDialog::close);
  return row;
}

void SheetPreview::setPaper(PaperSize size) {
  pages_->show(layOutSheet(content_, paperFormat(size)), spokenSheet(content_));
}

void SheetPreview::setZoom(double zoom) { pages_->setZoom(std::clamp(zoom, leastZoom, mostZoom)); }

void SheetPreview::keyPressEvent(QKeyEvent* event) {
  QScrollBar* bar = scroll_->verticalScrollBar();
  const bool zooms = event->modifiers().testFlag(Qt::ControlModifier);
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      if (zooms) return setZoom(pages_->zoom() * zoomStep);
      break;
    case Qt::Key_Minus:
      if (zooms) return setZoom(pages_->zoom() / zoomStep);
      break;
    case Qt::Key_PageDown:
      return bar->triggerAction(QAbstractSlider::SliderPageStepAdd);
    case Qt::Key_PageUp:
      return bar->triggerAction(QAbstractSlider::SliderPageStepSub);
    case Qt::Key_Down:
      return bar->triggerAction(QAbstractSlider::SliderSingleStepAdd);
    case Qt::Key_Up:
      return bar->triggerAction(QAbstractSlider::SliderSingleStepSub);
    default:
      break;
  }
  QDialog::keyPressEvent(event);
}

}  // namespace wardchalk::ui
