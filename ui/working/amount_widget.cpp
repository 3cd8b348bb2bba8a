#include "ui/working/amount_widget.h"

#include <QLayout>
#include <QPainter>

#include "core/words/amount_words.h"
#include "ui/working/amount_text.h"
#include "ui/working/question_list.h"

namespace wardchalk::ui {

AmountWidget::AmountWidget(QWidget* parent)
    : QWidget(parent), questions_(new QuestionList(this)), text_(new AmountText(this)) {
  connect(questions_, &QuestionList::answered, this, &AmountWidget::answered);
  questions_->setVisible(false);
}

void AmountWidget::show(const Shown& shown) {
  AmountWords words = amountWords(shown);
  if (!shown.asksFirst()) words.asks.clear();  // there is nothing to unfold
  std::vector<std::optional<Answer>> answers;
  for (const QuestionWords& question : words.asks) answers.push_back(shown.answerTo(question.code));
  questions_->show(words.asks, answers);
  text_->show(words);
}

bool AmountWidget::showsAmount() const { return text_->showsAmount(); }

QList<QWidget*> AmountWidget::focusOrder() const { return questions_->focusOrder() << text_; }

void AmountWidget::arrange(int width) {
  const int above = questions_->isEmpty() ? 0 : questions_->layout()->totalHeightForWidth(width);
  questions_->setGeometry(0, 0, width, above);
  text_->setGeometry(0, above, width, text_->heightAt(width));
}

int AmountWidget::heightAt(int width) {
  arrange(width);
  return text_->geometry().bottom() + 2;  // one more for the line below
}

void AmountWidget::setScale(double scale) {
  questions_->setScale(scale);
  text_->setScale(scale);
}

void AmountWidget::setScheme(Scheme scheme) {
  scheme_ = scheme;
  questions_->setScheme(scheme);
  text_->setScheme(scheme);
  update();
}

/// As with the texts inside, the size before it is seen is nobody's wish.
void AmountWidget::resizeEvent(QResizeEvent*) {
  if (isVisible()) arrange(width());
}

void AmountWidget::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), boardPalette(scheme_)[Ink::card]);  // where it is higher than its words, too
  painter.fillRect(0, height() - 1, width(), 1, boardPalette(scheme_)[Ink::edge]);
}

}  // namespace wardchalk::ui
