//! Many shots at once.

use std::ptr;

use tablerig::doors::c::border::mirror::Plain;
use tablerig::doors::c::brief::Brief;
use tablerig::doors::c::plan::{Plan, tablerig_plan_batch};
use tablerig::doors::c::status::{Fault, Status};

use crate::memory::{bytes, bytes_mut};
use crate::seeded::{self, Seeded};
use crate::set::{EMPTY, Set, empty_plan, field};
use crate::workshop;

const COUNT: usize = 300;

struct Batch {
    sets: Vec<Set>,
}

impl Batch {
    fn new() -> Batch {
        let mut of = Seeded::new(7);
        Batch { sets: (0..COUNT).map(|_| Set::new(&seeded::brief(&mut of))).collect() }
    }

    fn briefs(&self) -> Vec<Brief> {
        self.sets.iter().map(Set::brief).collect()
    }

    fn agrees(&self, index: usize, status: i32, plan: &Plan, fault: &Fault) {
        let alone = self.sets[index].plan();
        assert_eq!(status, alone.status);
        assert!(bytes(plan) == bytes(&alone.plan), "shot {index}");
        if status != 0 {
            assert_eq!((fault.status, field(fault)), (alone.status, field(&alone.fault)));
        } else {
            assert!(fault.field.is_null());
        }
    }
}

#[test]
fn each_goes_as_it_would_alone() {
    let batch = Batch::new();
    let briefs = batch.briefs();
    let mut plans = vec![empty_plan(); COUNT];
    let mut statuses = vec![-1; COUNT];
    let mut faults = vec![Fault::ZERO; COUNT];
    // SAFETY: arrays of as many elements as are told.
    let status = unsafe {
        tablerig_plan_batch(
            briefs.as_ptr(),
            size_of::<Brief>(),
            plans.as_mut_ptr(),
            size_of::<Plan>(),
            COUNT,
            statuses.as_mut_ptr(),
            faults.as_mut_ptr(),
        )
    };
    assert_eq!(status, 0);
    for index in 0..COUNT {
        batch.agrees(index, statuses[index], &plans[index], &faults[index]);
    }
    assert!(statuses.contains(&0) && statuses.iter().any(|status| *status != 0));
}

/// Briefs and plans inside larger elements of the caller's own.
#[test]
fn a_stride_steps_over_what_is_not_the_library_s() {
    #[repr(C)]
    #[derive(Clone, Copy)]
    struct Job {
        brief: Brief,
        mark: u64,
    }
    #[repr(C)]
    #[derive(Clone, Copy)]
    struct Done {
        plan: Plan,
        mark: [u64; 3],
    }
    let batch = Batch::new();
    let jobs: Vec<Job> = batch.briefs().into_iter().map(|brief| Job { brief, mark: 1 }).collect();
    let mut done = vec![Done { plan: empty_plan(), mark: [2; 3] }; COUNT];
    let mut statuses = vec![-1; COUNT];
    // SAFETY: arrays of as many elements as are told.
    let status = unsafe {
        tablerig_plan_batch(
            jobs.as_ptr().cast(),
            size_of::<Job>(),
            done.as_mut_ptr().cast(),
            size_of::<Done>(),
            COUNT,
            statuses.as_mut_ptr(),
            ptr::null_mut(),
        )
    };
    assert_eq!(status, 0);
    for (index, done) in done.iter().enumerate() {
        let alone = batch.sets[index].plan();
        assert_eq!(statuses[index], alone.status);
        assert!(bytes(&done.plan) == bytes(&alone.plan));
        assert_eq!((done.mark, jobs[index].mark), ([2; 3], 1));
    }
}

/// The addresses of arrays that threads share.
#[derive(Clone, Copy)]
struct Shared {
    briefs: usize,
    plans: usize,
    statuses: usize,
}

#[test]
fn threads_may_share_the_arrays() {
    let batch = Batch::new();
    let briefs = batch.briefs();
    let mut plans = vec![empty_plan(); COUNT];
    let mut statuses = vec![-1; COUNT];
    let shared = Shared {
        briefs: briefs.as_ptr().expose_provenance(),
        plans: plans.as_mut_ptr().expose_provenance(),
        statuses: statuses.as_mut_ptr().expose_provenance(),
    };
    std::thread::scope(|scope| {
        for part in 0..4 {
            scope.spawn(move || {
                let (from, count) = (part * COUNT / 4, COUNT / 4);
                // SAFETY: each thread has its own stretch of each array.
                let status = unsafe {
                    tablerig_plan_batch(
                        ptr::with_exposed_provenance::<Brief>(shared.briefs).add(from),
                        size_of::<Brief>(),
                        ptr::with_exposed_provenance_mut::<Plan>(shared.plans).add(from),
                        size_of::<Plan>(),
                        count,
                        ptr::with_exposed_provenance_mut::<i32>(shared.statuses).add(from),
                        ptr::null_mut(),
                    )
                };
                assert_eq!(status, 0);
            });
        }
    });
    for index in 0..COUNT {
        let alone = batch.sets[index].plan();
        assert_eq!(statuses[index], alone.status);
        assert!(bytes(&plans[index]) == bytes(&alone.plan));
    }
}

#[test]
fn a_batch_called_wrongly_does_nothing() {
    let set = Set::new(&workshop::overhead());
    let briefs = [set.brief(); 4];
    let (brief, plan) = (size_of::<Brief>(), size_of::<Plan>());
    let cases = [
        (brief - 8, plan, 4, Status::WrongSize),
        (brief + 4, plan, 4, Status::WrongSize),
        (brief, plan - 8, 4, Status::WrongSize),
        (brief, plan + 4, 4, Status::WrongSize),
        (0, plan, 4, Status::WrongSize),
        (brief, 0, 4, Status::WrongSize),
        (brief, plan, usize::MAX, Status::WrongSize),
        (brief, plan, usize::MAX / plan + 1, Status::WrongSize),
        (brief, usize::MAX & !7, 2, Status::WrongSize),
        (brief, plan, 0, Status::Ok),
    ];
    for (brief_stride, plan_stride, count, expected) in cases {
        let mut plans = [empty_plan(); 4];
        let mut statuses = [-1; 4];
        // SAFETY: what would run past the arrays is refused.
        let status = unsafe {
            tablerig_plan_batch(
                briefs.as_ptr(),
                brief_stride,
                plans.as_mut_ptr(),
                plan_stride,
                count,
                statuses.as_mut_ptr(),
                ptr::null_mut(),
            )
        };
        // A brief's stride that holds the least but not its own size is refused shot by shot.
        if brief_stride == brief - 8 {
            assert_eq!((status, statuses), (0, [Status::WrongSize as i32; 4]));
        } else {
            assert_eq!(
                (status, statuses),
                (expected as i32, [-1; 4]),
                "{brief_stride} {plan_stride} {count}"
            );
        }
        assert!(plans.iter().all(|plan| bytes(plan) == bytes(&empty_plan())));
    }
    let mut plans = [empty_plan(); 4];
    let mut statuses = [-1; 4];
    let call = |briefs: *const Brief, plans: *mut Plan, statuses: *mut i32, faults: *mut Fault| {
        // SAFETY: null and overlapping pointers are refused.
        unsafe { tablerig_plan_batch(briefs, brief, plans, plan, 4, statuses, faults) }
    };
    let none = ptr::null_mut();
    let (at, out, told) = (briefs.as_ptr(), plans.as_mut_ptr(), statuses.as_mut_ptr());
    assert_eq!(call(ptr::null(), out, told, none), Status::NullPointer as i32);
    assert_eq!(call(at, ptr::null_mut(), told, none), Status::NullPointer as i32);
    assert_eq!(call(at, out, ptr::null_mut(), none), Status::NullPointer as i32);
    assert_eq!(call(at, out, out.cast(), none), Status::Overlapping as i32);
    assert_eq!(call(at, out, told, out.cast()), Status::Overlapping as i32);
    assert_eq!(call(out.cast(), out, told, none), Status::Overlapping as i32);
    assert!(plans.iter().all(|plan| bytes(plan) == bytes(&empty_plan())));
}

/// A part that lies where another shot's plan is to go.
#[test]
fn parts_must_not_lie_in_the_plans() {
    let set = Set::new(&workshop::overhead());
    let mut plans = [empty_plan(); 3];
    bytes_mut(&mut plans[2])[64..64 + size_of_val(&set.lens)].copy_from_slice(bytes(&set.lens));
    let mut briefs = [set.brief(); 3];
    briefs[0].lens = (&raw const plans[2]).wrapping_byte_add(64).cast();
    let mut statuses = [-1; 3];
    // SAFETY: arrays of three; the lens lies within them.
    let status = unsafe {
        tablerig_plan_batch(
            briefs.as_ptr(),
            size_of::<Brief>(),
            plans.as_mut_ptr(),
            size_of::<Plan>(),
            3,
            statuses.as_mut_ptr(),
            ptr::null_mut(),
        )
    };
    assert_eq!(status, 0);
    assert_eq!(statuses, [Status::Overlapping as i32, 0, 0]);
    assert!(bytes(&plans[0])[4..].iter().all(|byte| *byte == EMPTY));
}
