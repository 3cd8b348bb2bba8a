#include "ui/working/start_page.h"

#include <QPainter>
#include <QPushButton>
#include <algorithm>

#include "core/words/phrasebook.h"
#include "ui/theme/buttons.h"
#include "ui/theme/text.h"
#include "ui/working/metrics.h"
#include "ui/working/start_text.h"

namespace wardchalk::ui {

namespace {

/// Lines longer than this, at 100 %, are hard to follow.
constexpr double widestText = 720;

}  // namespace

StartPage::StartPage(QWidget* parent)
    : QWidget(parent),
      text_(new StartText(this)),
      example_(plainButton(fromCore(say(PhraseId::start_example)), "example", this)) {
  connect(example_, &QPushButton::clicked, this, &StartPage::exampleRequested);
  setScale(1);
}

void StartPage::setScale(double scale) {
  scale_ = scale;
  text_->setScale(scale);
  example_->setFont(fontOf(Metrics{0, scale, {}, 1}.type(FontRole::body), {}));
  arrange();
}

void StartPage::offerExample(bool offered) { example_->setVisible(offered); }

void StartPage::setScheme(Scheme scheme) {
  scheme_ = scheme;
  text_->setScheme(scheme);
  update();
}

int StartPage::textWidth(int width) const {
  return std::min(width - 2 * left(), qRound(widestText * scale_));
}

QSize StartPage::button() const { return example_->sizeHint().expandedTo({0, qRound(36 * scale_)}); }

int StartPage::heightAt(int width) {
  const int air = qRound((8 + 12 + 16) * scale_);
  return text_->heightAt(textWidth(width)) + button().height() + air;
}

/// The text stands in the upper third, its left edge where a card's text would begin. Nothing is laid out
/// before it is seen: a case that is opened at once never shows this page.
void StartPage::arrange() {
  if (!isVisible()) return;
  const int wide = textWidth(width());
  const int high = text_->heightAt(wide);
  const int free = height() - high - button().height() - qRound(16 * scale_);
  const int top = std::max(qRound(8 * scale_), free / 3);
  text_->setGeometry(left(), top, wide, high);
  example_->setGeometry(left() + qRound(8 * scale_), top + high + qRound(12 * scale_),
                        std::min(button().width(), wide), button().height());
}

void StartPage::resizeEvent(QResizeEvent*) { arrange(); }

void StartPage::showEvent(QShowEvent*) { arrange(); }

void StartPage::paintEvent(QPaintEvent*) {
  QPainter(this).fillRect(rect(), boardPalette(scheme_)[Ink::board]);
}

}  // namespace wardchalk::ui
