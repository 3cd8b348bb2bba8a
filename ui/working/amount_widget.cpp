#include "ui/working/amount_widget.h"

#include <QLayout>
#include <QPainter>
#include <algorithm>
#include <map>

#include "core/words/phrasebook.h"
#include "ui/theme/text.h"
#include "ui/working/amount_text.h"
#include "ui/working/question_list.h"

namespace wardchalk::ui {

AmountWidget::AmountWidget(QWidget* parent)
    : QWidget(parent), questions_(new QuestionList(this)), text_(new AmountText(this)) {
  connect(questions_, &QuestionList::answered, this, [this] {
    tellAnswers();
    refresh();
    Q_EMIT changed();
  });
  questions_->setQuestions({});
}

void AmountWidget::show(const Worksheet& sheet, const Answers& answers) {
  const bool sameCase = sheet.given == given_ && sheet.rules == rules_;
  AmountWords words = amountWords(sheet);
  if (words.measure.empty()) words.asks.clear();  // there is nothing to unfold
  if (!sameCase || words.asks != words_.asks) {
    QStringList questions;
    for (const std::string& ask : words.asks) questions << held(ask);
    questions_->setQuestions(questions);
  }
  given_ = sheet.given;
  rules_ = sheet.rules;
  words_ = std::move(words);
  asked_ = asks() ? questionsOf(sheet) : std::vector<FindingCode>();
  showAnswers(answers);
}

void AmountWidget::showAnswers(const Answers& answers) {
  answers_ = answers;
  refresh();
}

/// One answer is for every question of the same code, and stands once all of them are ticked.
void AmountWidget::tellAnswers() {
  const std::vector<std::optional<Answer>> ticked = questions_->answers();
  std::map<FindingCode, std::optional<Answer>> told;
  for (std::size_t i = 0; i < std::min(asked_.size(), ticked.size()); ++i) {
    const auto [place, isNew] = told.emplace(asked_[i], ticked[i]);
    if (!isNew && !ticked[i]) place->second.reset();
  }
  for (const auto& [question, how] : told) Q_EMIT answered(question, how);
}

bool AmountWidget::isSettled() const { return answers_.areSettled(asked_) && questions_->allAnswered(); }

void AmountWidget::voidTicks() { questions_->voidTicks(); }

bool AmountWidget::showsAmount() const { return text_->showsAmount(); }

std::optional<QStringList> AmountWidget::asked() const {
  if (!asks() || !isSettled()) return std::nullopt;
  return questions_->whomAsked();
}

QList<QWidget*> AmountWidget::focusOrder() const { return questions_->focusOrder() << text_; }

void AmountWidget::refresh() {
  AmountText::Content content{words_, {}, {}};
  const auto count = static_cast<long>(words_.asks.size());
  if (count > 0 && !isSettled())
    content.before = held(say(PhraseId::ask_before, {{"n", std::to_string(count)}}, count));
  else if (count > 0)
    content.done = held(say(PhraseId::ask_done));
  text_->show(content);
}

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
  QPainter(this).fillRect(rect(), boardPalette(scheme_)[Ink::edge]);
}

}  // namespace wardchalk::ui
