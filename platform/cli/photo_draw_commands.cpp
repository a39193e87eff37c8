// SPDX-License-Identifier: Apache-2.0
// photo draw, measure, caption, move.
#include <algorithm>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "logbook/acts_photo.hpp"
#include "logbook/image_codec.hpp"
#include "logbook/query.hpp"

namespace snugwalk::cli {
namespace {

struct DrawOptions {
    std::string photo;
    std::vector<std::string> circles, arrows, rulers;
    bool erase = false;
};

Status readShapes(ShapeKind kind, const std::vector<std::string> &typed, std::vector<DrawnShape> &shapes)
{
    for (const std::string &text : typed) {
        const Result<DrawnShape> shape = parseShape(kind, text);
        if (!shape)
            return shape.error();
        shapes.push_back(*shape);
    }
    return done();
}

Result<Photo> photoNamed(Session &session, const std::string &typed)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    const Result<Id> id = idOf(**book, "photo", typed);
    return id ? photoOf(**book, *id) : Result<Photo>(id.error());
}

// The drawing of a photo, without shapes where there is none.
Result<Drawing> drawingOn(Session &session, const Photo &photo)
{
    const auto drawings = drawingsOf(**session.book(), photo.rig);
    if (!drawings)
        return drawings.error();
    for (const Drawing &drawing : *drawings) {
        if (drawing.photo == photo.id)
            return drawing;
    }
    Drawing none;
    none.photo = photo.id;
    return none;
}

std::string shapeWords(const DrawnShape &shape, UnitSystem units)
{
    const auto spot = [](double x, double y) { return fixed(x, 3) + "," + fixed(y, 3); };
    std::string out = "  " + std::string(slug(shape.kind)) + " " + spot(shape.x1, shape.y1) + " to " +
                      spot(shape.x2, shape.y2);
    if (shape.length)
        out += " = " + format(*shape.length, units);
    return out + (shape.text.empty() ? "" : ": " + shape.text) + "\n";
}

Result<Answer> draw(Session &session, const DrawOptions &o)
{
    const Result<Photo> photo = photoNamed(session, o.photo);
    if (!photo)
        return photo.error();
    const Result<Doer> doer = session.doer();
    Result<Drawing> drawing = drawingOn(session, *photo);
    if (!doer || !drawing)
        return doer ? drawing.error() : doer.error();
    if (o.erase)
        drawing->shapes.clear();
    SNUG_TRY(readShapes(ShapeKind::Circle, o.circles, drawing->shapes));
    SNUG_TRY(readShapes(ShapeKind::Arrow, o.arrows, drawing->shapes));
    SNUG_TRY(readShapes(ShapeKind::Ruler, o.rulers, drawing->shapes));
    const bool changes = o.erase || !o.circles.empty() || !o.arrows.empty() || !o.rulers.empty();
    if (changes) {
        const Result<Id> saved = saveDrawing(**session.book(), photo->id, drawing->shapes, *doer);
        if (!saved)
            return saved.error();
    }
    std::string text = "photo " + photo->id.shortText() + ", " + std::to_string(drawing->shapes.size()) +
                       " drawn; the picture itself is as it was\n";
    for (const DrawnShape &shape : drawing->shapes)
        text += shapeWords(shape, session.units());
    return Answer{toValue(*drawing), text};
}

Result<Answer> measured(Session &session, const std::string &typed, const std::string &spots)
{
    const Result<Photo> photo = photoNamed(session, typed);
    if (!photo)
        return photo.error();
    const Result<Drawing> drawing = drawingOn(session, *photo);
    const Result<DrawnShape> line = parseShape(ShapeKind::Arrow, spots);
    if (!drawing || !line)
        return drawing ? line.error() : drawing.error();
    const ImageSize size = upright({photo->width, photo->height}, photo->orientation);
    const Result<Length> length = measure(*drawing, line->x1, line->y1, line->x2, line->y2,
                                          static_cast<double>(size.width) / static_cast<double>(size.height));
    if (!length)
        return length.error();
    return Answer{Value::Map{{"photo", photo->id.text()},
                             {"length", Value::Map{{"value", length->si()}, {"unit", "m"}}},
                             {"basis", "computed"}},
                  "about " + format(*length, session.units()) +
                      ", where ruler and spots lie in one plane that faces the camera\n"};
}

Result<Answer> caption(Session &session, const std::string &typed, const std::string &words)
{
    const Result<Photo> photo = photoNamed(session, typed);
    const Result<Doer> doer = session.doer();
    if (!photo || !doer)
        return photo ? doer.error() : photo.error();
    SNUG_TRY(captionPhoto(**session.book(), photo->id, words, *doer));
    return Answer{Value::Map{{"photo", photo->id.text()}, {"caption", words}},
                  "photo " + photo->id.shortText() + ": " + words + "\n"};
}

Result<Answer> move(Session &session, const std::string &typed, int place)
{
    const Result<Photo> photo = photoNamed(session, typed);
    const Result<Doer> doer = session.doer();
    if (!photo || !doer)
        return photo ? doer.error() : photo.error();
    SNUG_TRY(movePhoto(**session.book(), photo->id, place, *doer));
    return Answer{Value::Map{{"photo", photo->id.text()}, {"order", place}},
                  "photo " + photo->id.shortText() + " is number " + std::to_string(place) +
                      " of its finding\n"};
}

void addDraw(CLI::App &photo, Registry &registry)
{
    auto o = std::make_shared<DrawOptions>();
    CLI::App *sub = photo.add_subcommand("draw", "draw over a photo, beside its untouched original");
    sub->add_option("photo", o->photo, "its id, see `snugwalk photo list`")->required();
    sub->add_option("--circle", o->circles, "centre and a point of the rim: x,y,x,y[:words]")
        ->allow_extra_args(false);
    sub->add_option("--arrow", o->arrows, "tail and tip: x,y,x,y[:words]")->allow_extra_args(false);
    sub->add_option("--ruler", o->rulers, "two ends and how far apart they are: x,y,x,y=120 mm[:words]")
        ->allow_extra_args(false);
    sub->add_flag("--erase", o->erase, "take away what is drawn, before anything new");
    registry.add(
        *sub,
        "  snugwalk photo draw 7c01d2e4 --circle 0.52,0.40,0.58,0.40 --ruler \"0.1,0.9,0.7,0.9=120 mm\"\n"
        "  snugwalk photo draw 7c01d2e4 --erase\n"
        "x and y are shares from 0 to 1 of the upright picture, from its top left corner.",
        [o](Session &s) { return draw(s, *o); });
}

} // namespace

void addPhotoDrawCommands(CLI::App &photo, Registry &registry)
{
    addDraw(photo, registry);
    auto id = std::make_shared<std::string>();
    auto words = std::make_shared<std::string>();
    auto place = std::make_shared<int>(1);
    CLI::App *measuring = photo.add_subcommand("measure", "how far two spots are apart, by the ruler drawn");
    measuring->add_option("photo", *id, "its id")->required();
    measuring->add_option("spots", *words, "x,y,x,y")->required();
    registry.add(*measuring, "  snugwalk photo measure 7c01d2e4 0.2,0.3,0.4,0.3",
                 [=](Session &s) { return measured(s, *id, *words); });
    CLI::App *naming = photo.add_subcommand("caption", "say what a photo shows");
    naming->add_option("photo", *id, "its id")->required();
    naming->add_option("words", *words, "in your words; empty takes them away")->required();
    registry.add(*naming, "  snugwalk photo caption 7c01d2e4 \"third rivet, from below\"",
                 [=](Session &s) { return caption(s, *id, *words); });
    CLI::App *moving = photo.add_subcommand("move", "put a photo in its place among those of its finding");
    moving->add_option("photo", *id, "its id")->required();
    moving->add_option("place", *place, "1 is the first")->required();
    registry.add(*moving, "  snugwalk photo move 7c01d2e4 1",
                 [=](Session &s) { return move(s, *id, *place); });
}

} // namespace snugwalk::cli
