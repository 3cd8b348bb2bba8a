#include "ui/paper/copies.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <algorithm>

#include "core/words/phrasebook.h"
#include "core/words/step_markup.h"
#include "core/words/working_markup.h"
#include "core/words/working_text.h"
#include "ui/paper/paper_palette.h"
#include "ui/theme/text.h"
#include "ui/working/paint_drawing.h"
#include "ui/working/step_layout.h"
#include "ui/working/step_views.h"

namespace wardchalk::ui {

namespace {

/// Of a picture of one step, in 1/96 inch; the picture is twice as fine.
constexpr double pictureWidth = 760;
constexpr double pictureZoom = 2;

QMimeData* fromText(const QString& mimeType, const std::string& source) {
  auto* data = new QMimeData;
  const QString text = fromCore(source);
  data->setText(text);
  if (!mimeType.isEmpty()) data->setData(mimeType, text.toUtf8());
  return data;
}

/// Steps under one another, black on white.
struct Picture {
  std::vector<StepLayout> steps;
  QSizeF size;
};

Picture pictureOf(std::vector<StepView> views) {
  Picture picture{{}, {pictureWidth, 0}};
  for (const StepView& view : views) {
    picture.steps.push_back(layOut(view, Metrics{pictureWidth, 1, {}, 1}));
    picture.size.rheight() += picture.steps.back().size.height();
  }
  return picture;
}

void paint(QPainter& painter, const Picture& picture) {
  painter.fillRect(QRectF(QPointF(), picture.size), Qt::white);
  for (const StepLayout& step : picture.steps) {
    paintDrawing(painter, step.drawing, paperPalette(), {});
    painter.translate(0, step.size.height());
  }
}

QImage imageOf(const Picture& picture) {
  QImage image((picture.size * pictureZoom).toSize(), QImage::Format_RGB32);
  QPainter painter(&image);
  painter.scale(pictureZoom, pictureZoom);
  paint(painter, picture);
  return image;
}

QByteArray svgOf(const Picture& picture, const QString& title) {
  QBuffer out;
  out.open(QIODevice::WriteOnly);
  QSvgGenerator generator;
  generator.setOutputDevice(&out);
  generator.setResolution(96);
  generator.setSize(picture.size.toSize());
  generator.setViewBox(QRectF(QPointF(), picture.size));
  generator.setTitle(title);
  QPainter painter(&generator);
  paint(painter, picture);
  painter.end();
  return out.data();
}

QMimeData* fromPicture(CopyAs as, const Picture& picture, const QString& title) {
  auto* data = new QMimeData;
  data->setImageData(imageOf(picture));  // who takes no drawing takes a picture
  if (as == CopyAs::svg) data->setData(QStringLiteral("image/svg+xml"), svgOf(picture, title));
  return data;
}

}  // namespace

std::unique_ptr<QMimeData> workingAs(CopyAs as, const Shown& shown) {
  switch (as) {
    case CopyAs::text:
      return std::unique_ptr<QMimeData>(fromText({}, workingText(shown)));
    case CopyAs::mathMl:
      return std::unique_ptr<QMimeData>(
          fromText(QStringLiteral("application/xhtml+xml"), workingMarkup(shown, Markup::mathml)));
    case CopyAs::latex:
      return std::unique_ptr<QMimeData>(
          fromText(QStringLiteral("application/x-tex"), workingMarkup(shown, Markup::latex)));
    case CopyAs::picture:
    case CopyAs::svg:
      break;
  }
  const QString title = fromCore(say(PhraseId::sheet_title));
  return std::unique_ptr<QMimeData>(fromPicture(as, pictureOf(stepViews(shown.sheet())), title));
}

std::unique_ptr<QMimeData> stepAs(CopyAs as, std::size_t step, const Shown& shown) {
  const Worksheet& sheet = shown.sheet();
  const Step& one = sheet.steps.at(step);
  switch (as) {
    case CopyAs::text:
      return std::unique_ptr<QMimeData>(fromText({}, stepText(one, static_cast<int>(step) + 1, sheet)));
    case CopyAs::mathMl:
      return std::unique_ptr<QMimeData>(
          fromText(QStringLiteral("application/mathml+xml"), stepMarkup(one, sheet, Markup::mathml)));
    case CopyAs::latex:
      return std::unique_ptr<QMimeData>(
          fromText(QStringLiteral("application/x-tex"), stepMarkup(one, sheet, Markup::latex)));
    case CopyAs::picture:
    case CopyAs::svg:
      break;
  }
  const StepView view = stepViews(sheet).at(step);
  return std::unique_ptr<QMimeData>(fromPicture(as, pictureOf({view}), view.sentence));
}

}  // namespace wardchalk::ui
