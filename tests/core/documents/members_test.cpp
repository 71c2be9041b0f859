#include "core/documents/document.h"

#include "files.h"
#include "random_project.h"

#include <rapidjson/document.h>
#include <rapidjson/stringbuffer.h>
#include <rapidjson/writer.h>

#include <functional>
#include <random>

using namespace frontwright;
using namespace frontwright::testing;

// Laws of members in any document, tried on the tree of an independent reader: one member is put
// in, taken out or moved at a time, in every object there is.
namespace {

using rapidjson::Document;
using rapidjson::Value;

Document parsed(const std::string& text) {
    Document document;
    document.Parse(text.data(), text.size());
    EXPECT_FALSE(document.HasParseError());
    return document;
}

std::string textOf(const Value& value) {
    rapidjson::StringBuffer buffer;
    rapidjson::Writer<rapidjson::StringBuffer> writer(buffer);
    value.Accept(writer);
    return {buffer.GetString(), buffer.GetSize()};
}

/// Calls `visit` for every object, outermost first.
void eachObject(Value& value, const std::function<void(Value&)>& visit) {
    if (value.IsObject()) {
        visit(value);
        for (auto& member : value.GetObject())
            eachObject(member.value, visit);
    } else if (value.IsArray()) {
        for (auto& item : value.GetArray())
            eachObject(item, visit);
    }
}

std::size_t objectsIn(Document& document) {
    std::size_t count = 0;
    eachObject(document, [&](Value&) { ++count; });
    return count;
}

/// The document with `change` made in its nth object.
std::string changedAt(const std::string& text, std::size_t nth,
                      const std::function<void(Value&, Document&)>& change) {
    Document document = parsed(text);
    std::size_t i = 0;
    eachObject(document, [&](Value& object) {
        if (i++ == nth)
            change(object, document);
    });
    return textOf(document);
}

std::vector<std::string> documents() {
    std::vector<std::string> texts;
    for (const auto& file : sampleFiles())
        texts.push_back(contentOf(file));
    texts.push_back(
        contentOf(sourceFolder() / "tests/fuzz/corpus/documents/everything.frontwright"));
    texts.push_back(writeDocument(RandomProject(11).project()));
    return texts;
}

Project readOrFail(const std::string& bytes) {
    Result<Project> read = readDocument(bytes);
    if (!read.ok()) {
        ADD_FAILURE() << read.error().sentence() << '\n' << bytes;
        return {};
    }
    return std::move(read).value();
}

} // namespace

TEST(Members, UnknownOnesSurviveInEveryObjectThereIs) {
    for (const std::string& text : documents()) {
        const std::string canonical = writeDocument(readOrFail(text));
        Document tree = parsed(canonical);
        const std::size_t count = objectsIn(tree);
        ASSERT_GT(count, 8U);
        for (std::size_t n = 0; n < count; ++n) {
            // At the end, where unknown members are written.
            const std::string with = changedAt(canonical, n, [](Value& object, Document& document) {
                Value inner(rapidjson::kObjectType);
                inner.AddMember("later", Value(7), document.GetAllocator());
                object.AddMember("not known/yet", inner, document.GetAllocator());
            });
            const std::string back = writeDocument(readOrFail(with));
            ASSERT_EQ(textOf(parsed(back)), with) << "object " << n;
        }
    }
}

TEST(Members, UnknownOnesChangeNothingElse) {
    const std::string text =
        contentOf(sourceFolder() / "samples/glaze-chest/glaze-chest.frontwright");
    const Project plain = readOrFail(text);
    Document tree = parsed(text);
    const std::size_t count = objectsIn(tree);
    for (std::size_t n = 0; n < count; ++n) {
        const std::string with = changedAt(text, n, [](Value& object, Document& document) {
            object.AddMember("future", Value("x"), document.GetAllocator());
        });
        Project read = readOrFail(with);
        ASSERT_FALSE(read == plain);
        const std::string bytes = writeDocument(read);
        const std::string line = "\"future\": \"x\"";
        const std::size_t at = bytes.find(line);
        ASSERT_NE(at, std::string::npos);
        ASSERT_EQ(bytes.find(line, at + 1), std::string::npos) << "written twice";
    }
}

TEST(Members, MayStandInAnyOrder) {
    std::mt19937 dice(3);
    for (const std::string& text : documents()) {
        const Project project = readOrFail(text);
        for (int round = 0; round < 20; ++round) {
            Document document = parsed(text);
            eachObject(document, [&](Value& object) {
                // Some of the members go to the end.
                for (rapidjson::SizeType i = 0; i < object.MemberCount(); ++i) {
                    if (dice() % 2 == 0)
                        continue;
                    const auto member = object.MemberBegin() + i;
                    Value name;
                    Value value;
                    name.CopyFrom(member->name, document.GetAllocator());
                    value.CopyFrom(member->value, document.GetAllocator());
                    object.EraseMember(member);
                    object.AddMember(name, value, document.GetAllocator());
                }
            });
            Project shuffled = readOrFail(textOf(document));
            // Unknown members keep the order in which they stand; that has changed.
            shuffled.unknowns = project.unknowns;
            shuffled.casework.unknowns = project.casework.unknowns;
            shuffled.fronts.unknowns = project.fronts.unknowns;
            ASSERT_TRUE(shuffled.limits == project.limits && shuffled.fronts == project.fronts &&
                        shuffled.own.bolts == project.own.bolts &&
                        shuffled.casework.frame == project.casework.frame);
            ASSERT_EQ(shuffled.nextId, project.nextId);
        }
    }
}

// What a document leaves out is refused by name, or has a value that the next saving shows.
TEST(Members, LeftOutAreMissedByNameOrHaveADefault) {
    for (const std::string& text : documents()) {
        Document tree = parsed(text);
        const std::size_t count = objectsIn(tree);
        for (std::size_t n = 0; n < count; ++n) {
            std::vector<std::string> names;
            changedAt(text, n, [&](Value& object, Document&) {
                for (const auto& member : object.GetObject())
                    names.emplace_back(member.name.GetString(), member.name.GetStringLength());
            });
            for (const std::string& name : names) {
                const std::string without = changedAt(
                    text, n, [&](Value& object, Document&) { object.EraseMember(name.c_str()); });
                const Result<Project> read = readDocument(without);
                if (read.ok()) {
                    const std::string bytes = writeDocument(read.value());
                    ASSERT_TRUE(readOrFail(bytes) == read.value()) << name;
                } else {
                    const std::string what = read.error().what.english();
                    const bool isNamed = what.find('"' + name + '"') != std::string::npos;
                    const bool isItsSideOrDirection =
                        name == "all" || name == "rows" || name == "columns";
                    // A preset is missed by its own name, its name by the value that it stands for.
                    const bool isItsPreset =
                        name == "preset" || what.starts_with("there is no preset \"");
                    ASSERT_TRUE(isNamed || isItsSideOrDirection || isItsPreset)
                        << name << ": " << what;
                }
            }
        }
    }
}

// A value of another kind in any place is refused at that very place.
TEST(Members, OfAnotherKindAreRefusedAtTheirPlace) {
    const std::string text = writeDocument(
        readOrFail(contentOf(sourceFolder() / "samples/first-try/first-try.frontwright")));
    Document tree = parsed(text);
    const std::size_t count = objectsIn(tree);
    int refused = 0;
    for (std::size_t n = 0; n < count; ++n) {
        for (rapidjson::SizeType i = 0;; ++i) {
            bool isThere = false;
            std::string name;
            const std::string changed = changedAt(text, n, [&](Value& object, Document&) {
                isThere = i < object.MemberCount();
                if (!isThere)
                    return;
                name = (object.MemberBegin() + i)->name.GetString();
                (object.MemberBegin() + i)->value.SetNull();
            });
            if (!isThere)
                break;
            const Result<Project> read = readDocument(changed);
            ASSERT_FALSE(read.ok()) << name;
            ASSERT_NE(read.error().place.english().find(name), std::string::npos)
                << name << ": " << read.error().sentence();
            ASSERT_NE(read.error().what.english().find("found null"), std::string::npos)
                << read.error().sentence();
            ++refused;
        }
    }
    EXPECT_GT(refused, 80);
}
