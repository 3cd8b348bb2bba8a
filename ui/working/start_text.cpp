#include "ui/working/start_text.h"

#include <QPainter>
#include <QStringList>

#include "core/words/phrasebook.h"
#include "ui/theme/text.h"
#include "ui/working/box.h"
#include "ui/working/paint_drawing.h"

namespace wardchalk::ui {

StartText::StartText(QWidget* parent)
    : SpokenWidget(parent),
      title_(held(say(PhraseId::start_title))),
      what_(held(say(PhraseId::start_what))),
      first_(held(say(PhraseId::start_first))),
      none_(held(say(PhraseId::start_none))) {
  setObjectName(QStringLiteral("start"));
  setSpoken(QStringList{title_, what_, first_, none_}.join(u' '));
}

double StartText::layOutAt(int width) {
  const Metrics metrics = metricsAt(width);
  const double pad = metrics.px(8);
  const double room = width - 2 * pad;
  Box text = column({paragraph(title_, FontRole::flag, Ink::text, metrics, room),
                     paragraph(what_, FontRole::body, Ink::text, metrics, room),
                     paragraph(first_, FontRole::body, Ink::text, metrics, room),
                     paragraph(none_, FontRole::finding, Ink::quiet, metrics, room)},
                    metrics.px(14));
  const double height = text.height();
  drawing_ = Drawing();
  drawing_.add(std::move(text.drawing), {pad, pad + text.above});
  return height + 2 * pad;
}

void StartText::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintDrawing(painter, drawing_, palette(), {});
  paintFocusRing(painter, palette()[Ink::focus]);
}

}  // namespace wardchalk::ui
