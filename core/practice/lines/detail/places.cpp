#include "core/practice/lines/detail/places.h"

namespace wardchalk::practice {

namespace {

void shift(Span& span, std::size_t by) {
  if (span.end == 0) return;  // nothing stands there
  span.begin += by;
  span.end += by;
}

}  // namespace

void shiftPlaces(StudentLine& line, std::size_t by) {
  for (LineSide& side : line.sides) {
    shift(side.at, by);
    for (FactorPlace& place : side.places) {
      shift(place.over, by);
      shift(place.under, by);
    }
  }
  for (LineLink& link : line.links) shift(link.at, by);
  for (LineRemark& remark : line.remarks) shift(remark.at, by);
}

void standAt(StudentLine& line, Span at) {
  for (LineSide& side : line.sides) {
    side.at = at;
    side.places.assign(side.places.size(), FactorPlace{at, {}});
  }
  for (LineLink& link : line.links) link.at = at;
  for (LineRemark& remark : line.remarks) remark.at = at;
}

}  // namespace wardchalk::practice
