#include "ui/practice/line_row.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/practice/lines/student_line.h"
#include "core/practice/sessions/lesson_words.h"
#include "ui/practice/line_words.h"
#include "ui/practice/mark_badge.h"
#include "ui/practice/practice_look.h"
#include "ui/practice/reading_line.h"
#include "ui/practice/verdict_choice.h"
#include "ui/practice/worked_picture.h"
#include "ui/theme/plain_tip.h"
#include "ui/theme/text.h"

namespace wardchalk::ui {

namespace {

QString nameOf(std::size_t line, const char* role) {
  return QStringLiteral("line-%1:%2").arg(line + 1).arg(QLatin1String(role));
}

/// Letters of a hint, which is read slowly.
constexpr double rungShare = 1.1;

/// What a rung says: words, or the worked line as the working has it.
QWidget* toldIn(QWidget* parent, const ShownRung& rung) {
  if (rung.picture) return new WorkedPicture(*rung.picture, rung.text, parent);
  QLabel* text = wordsIn(parent, rung.text, rungShare);
  text->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return text;
}

/// As the marker understands it, whatever the language of the screen.
QString nothingMeasured() { return QStringLiteral("do not measure"); }

/// Whether the widget takes its room while it is hidden.
void keepRoom(QWidget* widget, bool keeps) {
  QSizePolicy policy = widget->sizePolicy();
  policy.setRetainSizeWhenHidden(keeps);
  widget->setSizePolicy(policy);
}

}  // namespace

LineRow::LineRow(std::size_t line, const Problem& problem, const LineOffer& offer, QWidget* parent)
    : QWidget(parent), line_(line), ask_(problem.asks[line]), hints_(offer.hints) {
  setObjectName(nameOf(line, "row"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  buildQuestion(column, problem);
  auto* row = new QHBoxLayout;
  row->setSpacing(8);
  buildField(row);
  buildButtons(row, problem, offer);
  column->addLayout(row);
  buildReading(column);
  if (edit_ && line_ == 0) buildHow(column);
  buildFeedback(column);
  question_->setBuddy(field());
}

void LineRow::buildQuestion(QBoxLayout* column, const Problem& problem) {
  const QString question = questionWithUnit(ask_, problem);
  question_ = wordsIn(this, QStringLiteral("%1  %2").arg(line_ + 1).arg(question), 1.05, true);
  question_->setObjectName(nameOf(line_, "question"));
  column->addWidget(question_);
}

void LineRow::buildField(QBoxLayout* row) {
  const QString name =
      tr("Line %1: %2").arg(line_ + 1).arg(question_->text().section(QStringLiteral("  "), 1));
  if (ask_.isVerdict()) {
    verdict_ = new VerdictChoice(this);
    verdict_->setAccessibleName(name);
    row->addWidget(verdict_, 1);
    connect(verdict_, &VerdictChoice::chosen, this, &LineRow::edited);
    connect(verdict_, &VerdictChoice::entered, this, &LineRow::checkWanted);
    return;
  }
  edit_ = new QLineEdit(this);
  edit_->setObjectName(nameOf(line_, "text"));
  edit_->setAccessibleName(name);
  edit_->setMinimumHeight(practiceTarget + 4);
  edit_->setMaxLength(static_cast<int>(longestLine));
  setLetters(edit_, 1.12);
  row->addWidget(edit_, 1);
  connect(edit_, &QLineEdit::textEdited, this, &LineRow::edited);
  connect(edit_, &QLineEdit::returnPressed, this, &LineRow::checkWanted);
}

void LineRow::buildButtons(QBoxLayout* row, const Problem& problem, const LineOffer& offer) {
  const auto button = [&](const QString& text, const char* role) {
    QPushButton* made = plainButton(text, "", this, practiceTarget);
    made->setObjectName(nameOf(line_, role));
    made->setAccessibleName(tr("%1, line %2").arg(text).arg(line_ + 1));
    row->addWidget(made);
    return made;
  };
  if (ask_.step == StepId::give) {
    nothing_ = button(tr("Do not measure"), "nothing");
    connect(nothing_, &QPushButton::clicked, this, [this] { write(nothingMeasured()); });
  }
  if (edit_ && offer.builder && !lineFacts(ask_, problem).empty()) {
    build_ = button(tr("Build the line"), "build");
    build_->setToolTip(plainTip(tr("Put the line together out of facts (Ctrl+B)")));
    connect(build_, &QPushButton::clicked, this, &LineRow::buildWanted);
  }
  if (!offer.checking) return;
  check_ = button(tr("Check"), "check");
  check_->setToolTip(plainTip(tr("Check this line (Enter)")));
  connect(check_, &QPushButton::clicked, this, &LineRow::checkWanted);
}

void LineRow::buildReading(QBoxLayout* column) {
  if (verdict_) {
    how_ =
        quietWordsIn(this, tr("Press the first letter of a choice, or an arrow key and then the space bar."));
    how_->setObjectName(nameOf(line_, "how"));
    column->addWidget(how_);
    return;
  }
  reading_ = new ReadingLine(this);
  reading_->setObjectName(nameOf(line_, "reading"));
  column->addWidget(reading_);
}

void LineRow::buildHow(QBoxLayout* column) {
  how_ = quietWordsIn(this, tr("Write numbers with their units, then = and the result. You can type sqrt( ) "
                               "for √, * for ×, m2 for m²."));
  how_->setObjectName(nameOf(line_, "how"));
  column->addWidget(how_);
}

void LineRow::buildFeedback(QBoxLayout* column) {
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  badge_ = new MarkBadge(this);
  said_ = wordsIn(this, {});
  said_->setObjectName(nameOf(line_, "said"));
  said_->hide();
  row->addWidget(badge_, 0, Qt::AlignTop);
  row->addWidget(said_, 1);
  column->addLayout(row);
  rungs_ = new QWidget(this);
  rungs_->setObjectName(nameOf(line_, "rungs"));
  auto* rungs = new QGridLayout(rungs_);
  rungs->setContentsMargins(14, 0, 0, 0);
  rungs->setHorizontalSpacing(16);
  rungs->setVerticalSpacing(6);
  rungs->setColumnStretch(1, 1);
  rungs_->hide();
  column->addWidget(rungs_);
  hint_ = plainButton({}, "", this, practiceTarget);
  hint_->setObjectName(nameOf(line_, "hint"));
  hint_->setToolTip(plainTip(tr("Ctrl+H")));
  hint_->hide();
  column->addWidget(hint_, 0, Qt::AlignLeft);
  connect(hint_, &QPushButton::clicked, this, &LineRow::hintWanted);
}

QString LineRow::text() const { return verdict_ ? verdict_->text() : edit_->text(); }

void LineRow::setText(const QString& text) {
  if (verdict_)
    verdict_->setText(text);
  else
    edit_->setText(text);
}

void LineRow::write(const QString& text) {
  setText(text);
  field()->setFocus(Qt::OtherFocusReason);
  if (edit_) edit_->end(false);
  Q_EMIT edited();
}

QWidget* LineRow::field() const { return verdict_ ? static_cast<QWidget*>(verdict_) : edit_; }

void LineRow::setReadOnly(bool readOnly) {
  if (verdict_) verdict_->setReadOnly(readOnly);
  if (edit_) edit_->setReadOnly(readOnly);
  for (QPushButton* button : {check_, build_, nothing_})
    if (button) button->setVisible(!readOnly);
  if (how_) how_->setVisible(!readOnly);
}

void LineRow::setCurrent(bool current) {
  current_ = current;
  offerHint();
}

void LineRow::showReading(const LineReading& reading) {
  if (reading_) reading_->show(reading);
}

/// Room is kept for it, so that nothing moves away from under the pointer when another line is clicked at.
void LineRow::offerHint() {
  const bool offered = hints_ && !hint_->text().isEmpty();
  keepRoom(hint_, offered);
  hint_->setVisible(offered && (current_ || looked_));
}

void LineRow::show(const LineFeedback& feedback, bool pointAtFault) {
  for (QWidget* one : std::initializer_list<QWidget*>{badge_, said_}) keepRoom(one, false);
  badge_->show(feedback.mark, feedback.word);
  if (reading_ && feedback.mark == Mark::unread) reading_->show(LineReading{});  // it is said below now
  said_->setText(feedback.said.join(u'\n'));
  said_->setVisible(!feedback.said.isEmpty());
  showRungs(feedback.rungs);
  const bool hadKeyboard = hint_->hasFocus();
  hint_->setText(feedback.next);
  hint_->setAccessibleName(feedback.next.isEmpty() ? QString()
                                                   : tr("%1, line %2").arg(feedback.next).arg(line_ + 1));
  looked_ = feedback.mark.has_value();
  offerHint();
  if (hadKeyboard && feedback.next.isEmpty()) field()->setFocus(Qt::OtherFocusReason);
  field()->setAccessibleDescription(feedback.spoken());
  if (pointAtFault) point(feedback);
}

void LineRow::takeBackMark(Said said) {
  for (QWidget* one : std::initializer_list<QWidget*>{badge_, said_}) {
    if (one->isHidden() || (one == said_ && said == Said::stays)) continue;
    keepRoom(one, true);
    one->hide();
  }
  field()->setAccessibleDescription(said == Said::stays ? said_->text().replace(u'\n', u' ') : QString());
}

void LineRow::showRungs(const std::vector<ShownRung>& rungs) {
  qDeleteAll(rungs_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
  auto* grid = static_cast<QGridLayout*>(rungs_->layout());
  int row = 0;
  for (const ShownRung& rung : rungs) {
    QLabel* title = wordsIn(rungs_, rung.title, rungShare, true);
    title->setWordWrap(false);
    QWidget* told = toldIn(rungs_, rung);
    told->setObjectName(nameOf(line_, "rung-") + QString::number(row + 1));
    grid->addWidget(title, row, 0, Qt::AlignTop);
    grid->addWidget(told, row, 1);
    ++row;
  }
  rungs_->setVisible(!rungs.empty());
}

void LineRow::point(const LineFeedback& feedback) {
  if (!edit_ || !feedback.pointed) return;
  const TextRange range = rangeOf(*feedback.pointed, edit_->text().toStdString());
  if (range.length > 0)
    edit_->setSelection(range.begin, range.length);
  else
    edit_->setCursorPosition(range.begin);
}

}  // namespace wardchalk::ui
